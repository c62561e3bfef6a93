package org.scalepan.factors.loading;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.TableSchema;

/**
 * The bundled library reduced to the rows it needs to load, so that each fuzzer input is fast. It is created before the fuzzer starts,
 * whose instrumentation is slow.
 */
final class SmallLibrary {
    private static final int ROWS = 3;

    private SmallLibrary() {}

    /** Creates it in the given folder. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        FactorFiles bundled = new FactorFiles.Bundled();
        List<TableSchema> schemas = schemas(bundled);
        List<String> names = new ArrayList<>(List.of("datapackage.json", "sources.json", "VERSION"));
        schemas.forEach(schema -> names.add(schema.path()));
        for (String name : names) {
            Files.write(folder.resolve(name), bundled.read(name).orElseThrow());
        }
        for (TableSchema schema : schemas) {
            shorten(new FactorFiles.Folder(folder), schema, folder.resolve(schema.path()));
        }
    }

    private static void shorten(FactorFiles files, TableSchema schema, Path file) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        List<Row> rows = CsvReading.read(schema, schema.path(), whole, false, new ArrayList<>())
                .rows();
        if (rows.size() > ROWS) {
            Files.writeString(file, text(schema, rows.subList(0, ROWS)));
            if (LibraryLoader.load(files, Optional.empty()) instanceof LibraryLoad.Broken) {
                Files.write(file, whole);
            }
        }
    }

    static List<TableSchema> schemas(FactorFiles files) {
        try {
            return TableSchema.readAll(
                    new JsonMapper().readTree(files.read("datapackage.json").orElseThrow()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(TableSchema schema, List<Row> rows) {
        return line(names(schema))
                + rows.stream().map(row -> line(cells(schema, row))).collect(Collectors.joining());
    }

    static List<String> names(TableSchema schema) {
        return schema.fields().stream().map(TableSchema.Field::name).toList();
    }

    static List<String> cells(TableSchema schema, Row row) {
        return names(schema).stream()
                .map(name -> row.optional(name).orElse(""))
                .toList();
    }

    /** Cells (RFC 4180), each in quotes. */
    static String line(List<String> cells) {
        return cells.stream()
                .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                .collect(Collectors.joining(",", "", "\n"));
    }
}
