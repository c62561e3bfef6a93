package org.scalepan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;

/** A folder in which a test writes rows of its own, as a user would for {@code --factors}. */
public final class OwnFolder {
    private final Path path;

    public OwnFolder(Path path) {
        this.path = path;
    }

    /** Adds a row that is like a bundled one but for the cells given; an empty cell is absent. */
    public OwnFolder rowLike(String table, String id, Map<String, String> changed) {
        Table bundled = Libraries.bundled().table(table);
        Row model = bundled.rows().stream()
                .filter(row -> row.text("id").equals(id))
                .findFirst()
                .orElseThrow();
        Map<String, String> cells = new LinkedHashMap<>(model.cells());
        cells.putAll(changed);
        return row(bundled.schema(), cells);
    }

    private OwnFolder row(TableSchema schema, Map<String, String> cells) {
        Path file = path.resolve(schema.path());
        String header = schema.fields().stream().map(TableSchema.Field::name).collect(Collectors.joining(","));
        String line = schema.fields().stream()
                .map(field -> quoted(cells.getOrDefault(field.name(), "")))
                .collect(Collectors.joining(","));
        append(file, (Files.exists(file) ? "" : header + "\n") + line + "\n");
        return this;
    }

    private static String quoted(String cell) {
        return cell.matches("[^\",\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static void append(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path path() {
        return path;
    }

    /** The bundled library with this folder laid over it. */
    public Library library() {
        return Libraries.withOwn(path);
    }
}
