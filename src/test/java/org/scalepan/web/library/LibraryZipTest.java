package org.scalepan.web.library;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.FactorFiles;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.server.WebServer;

/** A downloaded library gives the same answers: the folder loads as the library that was served. */
class LibraryZipTest {
    @TempDir
    Path folder;

    private static byte[] zip() {
        return RunningScalepan.given().get("/v1/library.zip").asByteArray();
    }

    private static void unzip(byte[] zip, Path into) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                assertTrue(
                        entry.getName().matches("(systems/|reference_farms/)?[A-Za-z0-9_-]+(\\.[a-z]+)?"),
                        entry.getName());
                Path file = into.resolve(entry.getName());
                Files.createDirectories(file.getParent());
                Files.write(file, in.readAllBytes());
            }
        }
    }

    private static Library loaded(FactorFiles base, Optional<FactorFiles> own) {
        LibraryLoad load = LibraryLoader.load(base, own);
        assertTrue(load instanceof LibraryLoad.Loaded, () -> load.toString());
        return ((LibraryLoad.Loaded) load).library();
    }

    @Test
    void the_folder_loads_as_the_library_that_served_it() throws Exception {
        unzip(zip(), folder);

        Library again = loaded(new FactorFiles.Folder(folder), Optional.empty());
        assertEquals(RunningScalepan.library().version(), again.version());
        assertEquals(
                RunningScalepan.library().references().keySet(),
                again.references().keySet());
    }

    @Test
    void own_rows_are_in_it_and_the_digest_is_that_of_all() throws Exception {
        Path own = Files.createDirectory(folder.resolve("own"));
        Path whole = Files.createDirectory(folder.resolve("whole"));
        Files.writeString(own.resolve("indicators.csv"), ownIndicator());
        Library overlaid = loaded(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(own)));
        assertEquals(1, overlaid.version().ownRows());

        try (WebServer server = new WebServer(overlaid).start("127.0.0.1", 0)) {
            byte[] zip = io.restassured.RestAssured.given()
                    .get("http://127.0.0.1:" + server.port() + "/v1/library.zip")
                    .asByteArray();
            unzip(zip, whole);
        }

        Library again = loaded(new FactorFiles.Folder(whole), Optional.empty());
        assertEquals(overlaid.version().digest(), again.version().digest());
        assertEquals(overlaid.version().version(), again.version().version());
    }

    /** The bundled row of one indicator under another name. */
    private static String ownIndicator() throws IOException {
        String[] lines = Files.readString(Path.of("factors", "indicators.csv")).split("\n");
        return lines[0] + "\n" + lines[1].replaceFirst(",", ",My ") + "\n";
    }

    @Test
    void it_has_the_same_bytes_each_time_and_names_its_library() {
        assertArrayEquals(zip(), zip());
        RunningScalepan.given()
                .get("/v1/library.zip")
                .then()
                .statusCode(200)
                .contentType("application/zip")
                .header("Library-Digest", RunningScalepan.digest())
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"scalepan-library-" + RunningScalepan.digest() + ".zip\"")
                .header("ETag", org.hamcrest.Matchers.matchesPattern("\"[0-9a-f]{32}\""));
    }

    @Test
    void schema_and_documents_are_those_of_the_repository() throws Exception {
        unzip(zip(), folder);

        for (String name : new String[] {"datapackage.json", "README.md", "LEFT-OUT.md", "VERSION"}) {
            assertEquals(
                    Files.readString(Path.of("factors", name)).strip(),
                    Files.readString(folder.resolve(name)).strip(),
                    name);
        }
    }

    @Test
    void every_worked_system_and_reference_farm_is_in_it_as_it_lies_in_the_repository() throws Exception {
        unzip(zip(), folder);

        for (String kind : new String[] {"systems", "reference_farms"}) {
            try (Stream<Path> systems = Files.list(Path.of("factors", kind))) {
                for (Path system : systems.toList()) {
                    assertArrayEquals(
                            Files.readAllBytes(system),
                            Files.readAllBytes(folder.resolve(kind).resolve(system.getFileName())),
                            system.toString());
                }
            }
        }
    }
}
