package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.web.http.ByteQuota;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ProblemException;

/** The temporary folder of rows: nothing stays in it, and the operator is told where it cannot be used. */
class SpoolFolderTest {
    private static final Client ONE = Client.at("192.0.2.1");

    @TempDir
    private Path folder;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void rows_that_wait_have_no_name_that_could_outlive_the_process() throws IOException {
        ByteQuota quota = new ByteQuota(1_000, "rows");
        try (Spool spool =
                Spool.of(new SpoolFolder(folder), new ByteArrayInputStream(new byte[] {7, 8}), 10, 10, quota, ONE)) {
            assertEquals(List.of(), names(folder));
            try (InputStream read = spool.read()) {
                assertEquals(7, read.read());
                assertEquals(List.of(), names(folder));
            }
        }
    }

    @Test
    void a_folder_that_can_be_used_has_no_findings_but_perhaps_too_little_space() {
        assertTrue(new SpoolFolder(folder).fault().isEmpty());
        new SpoolFolder(folder).findings().forEach(found -> assertTrue(found.contains("MB free"), found));
    }

    @Test
    void a_missing_folder_is_told_at_the_start_and_refuses_rows_with_what_to_do() {
        SpoolFolder missing = new SpoolFolder(folder.resolve("nowhere"));
        ByteQuota quota = new ByteQuota(1_000, "rows");

        assertTrue(missing.findings().get(0).contains("does not exist; POST /v1/footprints will be refused"));
        ProblemException refused = assertThrows(
                ProblemException.class,
                () -> Spool.of(missing, new ByteArrayInputStream(new byte[2]), 10, 10, quota, ONE));
        assertEquals(503, refused.problem().status());
        assertTrue(refused.problem().detail().contains("ask its operator to see to the temporary folder"));
        assertFalse(refused.problem().detail().contains("nowhere"), "no path is told to clients");
        assertEquals(0, quota.reserved());
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_told() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));

        assertTrue(new SpoolFolder(file).findings().get(0).contains("is not a folder"));
    }

    @Test
    void what_a_process_that_is_gone_has_left_is_removed_and_nothing_else() throws IOException, InterruptedException {
        Process gone = new ProcessBuilder("true").start();
        gone.waitFor();
        long alive = ProcessHandle.current().parent().orElseThrow().pid();
        long own = ProcessHandle.current().pid();
        Files.createFile(folder.resolve("scalepan-rows-" + gone.pid() + "-1f.tmp"));
        Files.createFile(folder.resolve("scalepan-rows-" + alive + "-2f.tmp"));
        Files.createFile(folder.resolve("scalepan-rows-" + own + "-3f.tmp"));
        Path former = Files.createFile(folder.resolve("scalepan-rows-" + own + "-4f.tmp"));
        Files.setLastModifiedTime(former, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
        Files.createFile(folder.resolve("scalepan-rows-notes.tmp"));
        Files.createDirectory(folder.resolve("scalepan-rows-" + gone.pid() + "-5f.tmp"));

        new SpoolFolder(folder).findings();

        assertEquals(
                Stream.of(
                                "scalepan-rows-" + alive + "-2f.tmp",
                                "scalepan-rows-" + own + "-3f.tmp",
                                "scalepan-rows-" + gone.pid() + "-5f.tmp",
                                "scalepan-rows-notes.tmp")
                        .sorted()
                        .toList(),
                names(folder));
    }
}
