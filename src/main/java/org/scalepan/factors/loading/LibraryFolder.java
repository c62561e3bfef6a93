package org.scalepan.factors.loading;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.scalepan.cite.CslJson;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;

/**
 * A library as the folder that would load as it: its tables and references as they are in memory, a user's own rows among them,
 * with the schema and the documents of the folder it was read from.
 */
public final class LibraryFolder {
    private LibraryFolder() {}

    /** The content of every file by its name, in the order of the names. */
    public static Map<String, byte[]> of(Library library) {
        Map<String, byte[]> files = new TreeMap<>(library.documents());
        library.tables().forEach(table -> files.put(table.schema().path(), utf8(csv(table))));
        files.put("sources.json", utf8(sources(library)));
        files.put("VERSION", utf8(library.version().version() + "\n"));
        return files;
    }

    private static String csv(Table table) {
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
            csv.writeRecord(table.schema().fields().stream()
                    .map(TableSchema.Field::name)
                    .toList());
            table.rows()
                    .forEach(row -> csv.writeRecord(table.schema().fields().stream()
                            .map(field -> row.cell(field.name()))
                            .toList()));
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return out.toString();
    }

    private static String sources(Library library) {
        try {
            return new JsonMapper()
                            .writerWithDefaultPrettyPrinter()
                            .writeValueAsString(CslJson.write(
                                    java.util.List.copyOf(library.references().values())))
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
