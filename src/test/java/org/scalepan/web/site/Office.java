package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.scalepan.JsonAt;

/**
 * Headless LibreOffice, with a profile that trusts one folder, so that only files there may call the service when opened. Runs steps and
 * reports what the cells show.
 */
final class Office {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Path SCRIPT = Path.of("src", "test", "resources", "office", "office.py");
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final int MOST_SECONDS = 180;

    private final Path folder;
    private final String locale;
    private final ArrayNode steps = JSON.createArrayNode();

    /**
     * A program that is started by {@link #run}.
     *
     * @param folder the folder of its files and its profile
     * @param locale such as {@code de-DE}, which decides what a decimal sign is
     */
    Office(Path folder, String locale) {
        this.folder = folder;
        this.locale = locale;
        skipUnlessInstalled();
    }

    private static void skipUnlessInstalled() {
        RealClients.skipUnless(
                RealClients.runs(PYTHON.toString(), "-c", "import uno") && RealClients.runs("soffice", "--version"),
                "needs a real LibreOffice with its Python bridge: apt-get install libreoffice-calc python3-uno");
    }

    Office open(Path file) {
        step("open").put("url", file.toUri().toString());
        return this;
    }

    Office blank() {
        step("new");
        return this;
    }

    Office text(String sheet, String cell, String text) {
        step("text").put("sheet", sheet).put("cell", cell).put("text", text);
        return this;
    }

    /** A formula in the first sheet, as stored in files: with semicolons between arguments. */
    Office formula(String cell, String formula) {
        step("formula").put("cell", cell).put("formula", formula);
        return this;
    }

    /** Recalculates everything, as Ctrl+Shift+F9 does. */
    Office again() {
        step("again");
        return this;
    }

    Office read() {
        step("read");
        return this;
    }

    Office csv(String sheet, Path file) {
        step("csv").put("sheet", sheet).put("url", file.toUri().toString());
        return this;
    }

    private ObjectNode step(String what) {
        return steps.addObject().put("do", what);
    }

    /** What each {@link #read} saw. */
    List<Seen> run() throws IOException, InterruptedException {
        String pipe = "scalepan" + ProcessHandle.current().pid() + "x" + System.nanoTime();
        Path profile = Files.createTempDirectory(folder, "profile");
        writeSettings(profile);
        Process office = new ProcessBuilder(
                        "soffice",
                        "-env:UserInstallation=" + profile.toUri(),
                        "--headless",
                        "--norestore",
                        "--nologo",
                        "--accept=pipe,name=" + pipe + ";urp")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("office.log").toFile())
                .start();
        try {
            return seen(pipe);
        } finally {
            office.descendants().forEach(ProcessHandle::destroy);
            office.destroy();
            if (!office.waitFor(20, TimeUnit.SECONDS)) {
                office.descendants().forEach(ProcessHandle::destroyForcibly);
                office.destroyForcibly();
            }
        }
    }

    private List<Seen> seen(String pipe) throws IOException, InterruptedException {
        Path out = folder.resolve("seen.json");
        Path errors = folder.resolve("seen.errors");
        Process script = new ProcessBuilder(PYTHON.toString(), SCRIPT.toString())
                .redirectOutput(out.toFile())
                .redirectError(errors.toFile())
                .start();
        ObjectNode job = JSON.createObjectNode().put("pipe", pipe);
        job.set("steps", steps);
        try (var in = script.getOutputStream()) {
            in.write(job.toString().getBytes(StandardCharsets.UTF_8));
        }
        if (!script.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
            script.destroyForcibly();
            fail("LibreOffice took more than " + MOST_SECONDS + " seconds");
        }
        assertEquals(0, script.exitValue(), () -> contents(errors) + contents(folder.resolve("office.log")));
        List<Seen> seen = new ArrayList<>();
        JSON.readTree(out.toFile()).forEach(one -> seen.add(new Seen(one)));
        return seen;
    }

    private static String contents(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return "";
        }
    }

    private void writeSettings(Path profile) throws IOException {
        Path user = Files.createDirectories(profile.resolve("user"));
        Files.writeString(user.resolve("registrymodifications.xcu"), """
                <?xml version="1.0" encoding="UTF-8"?>
                <oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
                <item oor:path="/org.openoffice.Office.Common/Security/Scripting"><prop oor:name="SecureURL" oor:op="fuse"><value><it>%s</it></value></prop></item>
                <item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>%s</value></prop></item>
                </oor:items>
                """.formatted(
                        folder.toUri().toString().replaceAll("/$", ""), locale));
    }

    /** What the cells of a document show. */
    record Seen(JsonNode sheets) {
        private JsonNode cell(String sheet, String cell) {
            return sheets.path(sheet).path(cell);
        }

        /** The displayed text of a cell. */
        String text(String sheet, String cell) {
            return JsonAt.text(cell(sheet, cell), "/text");
        }

        /** The number in a cell; fails if it holds text or nothing. */
        double number(String sheet, String cell) {
            JsonNode number = cell(sheet, cell).path("number");
            if (!number.isNumber()) {
                fail(sheet + "!" + cell + " holds no number: " + cell(sheet, cell));
            }
            return JsonAt.number(number, "");
        }

        /** Cells that show an error of the spreadsheet. */
        List<String> errors() {
            List<String> errors = new ArrayList<>();
            sheets.fields()
                    .forEachRemaining(sheet -> sheet.getValue().fields().forEachRemaining(cell -> {
                        if (JsonAt.integer(cell.getValue(), "/error") != 0) {
                            errors.add(sheet.getKey() + "!" + cell.getKey() + " " + cell.getValue());
                        }
                    }));
            return errors;
        }

        Stream<String> names() {
            Iterable<String> names = sheets::fieldNames;
            return StreamSupport.stream(names.spliterator(), false);
        }
    }
}
