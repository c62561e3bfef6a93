package org.scalepan.factors;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A user's folder with one file out of order: whatever stands in it, the library is loaded or every fault is told with its place;
 * anything that is thrown is a find.
 */
public final class FactorFuzz {
    private static final FactorFiles BUNDLED = new FactorFiles.Bundled();
    private static final int ROWS = 3;
    private static final List<TableSchema> SCHEMAS = schemas();
    private static final Path FOLDER = folder();
    private static final FactorFiles SMALL = small();

    private FactorFuzz() {}

    private static List<TableSchema> schemas() {
        try {
            return TableSchema.readAll(
                    new JsonMapper().readTree(BUNDLED.read("datapackage.json").orElseThrow()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("scalepan-fuzz");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The bundled library with few rows wherever it loads without the others, so that an input takes no longer than it must. */
    private static FactorFiles small() {
        try {
            Path folder = folder();
            Files.write(folder.resolve("datapackage.json"), BUNDLED.read("datapackage.json").orElseThrow());
            Files.write(folder.resolve("sources.json"), BUNDLED.read("sources.json").orElseThrow());
            Files.write(folder.resolve("VERSION"), BUNDLED.read("VERSION").orElseThrow());
            for (TableSchema schema : SCHEMAS) {
                Files.write(folder.resolve(schema.path()), BUNDLED.read(schema.path()).orElseThrow());
            }
            FactorFiles files = new FactorFiles.Folder(folder);
            for (TableSchema schema : SCHEMAS) {
                Path file = folder.resolve(schema.path());
                byte[] whole = Files.readAllBytes(file);
                List<Row> rows = CsvReading.read(schema, schema.path(), whole, false, new ArrayList<>())
                        .rows();
                Files.writeString(file, text(schema, rows.subList(0, Math.min(ROWS, rows.size()))));
                if (LibraryLoader.load(files, Optional.empty()) instanceof LibraryLoad.Broken) {
                    Files.write(file, whole);
                }
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(TableSchema schema, List<Row> rows) {
        List<String> names =
                schema.fields().stream().map(TableSchema.Field::name).toList();
        return line(names)
                + rows.stream()
                        .map(row -> line(names.stream()
                                .map(name -> row.optional(name).orElse(""))
                                .toList()))
                        .collect(Collectors.joining());
    }

    /** The first bytes choose the table and how much of it stays right. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) throws IOException {
        int chosen = data.consumeInt(0, SCHEMAS.size());
        if (chosen == SCHEMAS.size()) {
            load("sources.json", data.consumeRemainingAsBytes());
            return;
        }
        TableSchema schema = SCHEMAS.get(chosen);
        byte[] bytes = data.consumeBoolean() ? data.consumeRemainingAsBytes() : spoilt(schema, data);
        List<Fault> faults = new ArrayList<>();
        CsvReading.read(schema, schema.path(), bytes, true, faults);
        // A library takes much longer to load than a table to read; what already has no form is loaded now and then only.
        if (faults.isEmpty() || bytes.length % 16 == 0) {
            load(schema.path(), bytes);
        }
    }

    /** A row of the bundled table with some cells in which anything may stand, properly quoted. */
    private static byte[] spoilt(TableSchema schema, FuzzedDataProvider data) {
        List<Fault> none = new ArrayList<>();
        Table table = CsvReading.read(
                schema, schema.path(), SMALL.read(schema.path()).orElseThrow(), false, none);
        List<String> names =
                schema.fields().stream().map(TableSchema.Field::name).toList();
        Row row = table.rows().get(data.consumeInt(0, table.rows().size() - 1));
        List<String> cells =
                new ArrayList<>(names.stream().map(name -> row.optional(name).orElse("")).toList());
        int changes = data.consumeInt(1, 3);
        for (int i = 0; i < changes; i++) {
            cells.set(data.consumeInt(0, cells.size() - 1), data.consumeString(60));
        }
        return (line(names) + line(cells)).getBytes(StandardCharsets.UTF_8);
    }

    private static String line(List<String> cells) {
        return cells.stream()
                .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                .collect(Collectors.joining(",", "", "\n"));
    }

    private static void load(String name, byte[] bytes) throws IOException {
        Path file = FOLDER.resolve(name);
        Files.write(file, bytes);
        try {
            LibraryLoad load = LibraryLoader.load(SMALL, Optional.of(new FactorFiles.Folder(FOLDER)));
            if (load instanceof LibraryLoad.Broken broken && broken.faults().isEmpty()) {
                throw new AssertionError("broken without a fault");
            }
        } finally {
            Files.delete(file);
        }
    }
}
