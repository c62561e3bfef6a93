package org.scalepan.factors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Libraries;
import org.scalepan.cite.Reference;
import org.scalepan.factors.loading.LibraryDigest;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/** The digest says "the same content": it follows every cell and nothing else. */
class LibraryDigestTest {
    private static final String BUNDLED = Libraries.bundled().version().digest();

    @TempDir
    Path folder;

    LibraryCopy copy;

    @BeforeEach
    void copyTheBundledFolder() {
        copy = new LibraryCopy(folder);
    }

    @Test
    void it_is_sixteen_hex_digits_and_the_same_for_a_copy() {
        assertTrue(BUNDLED.matches("[0-9a-f]{16}"), BUNDLED);
        assertEquals(BUNDLED, copy.library().version().digest());
    }

    @Test
    void it_does_not_depend_on_line_ends() {
        for (String file : List.of("results.csv", "composition.csv", "products.csv")) {
            copy.write(file, copy.text(file).replace("\n", "\r\n"));
        }
        assertEquals(BUNDLED, copy.library().version().digest());
    }

    @Test
    void it_does_not_depend_on_quoting() {
        copy.set("forms.csv", "dried", "name", "\"Dried\"");
        copy.set("products.csv", "pork", "name", "\"pork\"");
        assertEquals(BUNDLED, copy.library().version().digest());
    }

    @Test
    void it_does_not_depend_on_the_layout_of_sources_json() throws IOException {
        ObjectMapper json = new ObjectMapper();
        copy.write("sources.json", json.readTree(copy.text("sources.json")).toString());
        assertEquals(BUNDLED, copy.library().version().digest());
    }

    /** Property: in every table, one note, name or text changed is another library. */
    @Test
    void it_changes_with_any_text_cell_of_any_table() {
        SplittableRandom random = new SplittableRandom(20261101);
        Library bundled = Libraries.bundled();
        Map<String, Table> tables = new TreeMap<>();
        bundled.tables().forEach(table -> tables.put(table.schema().name(), table));
        List<Reference> references = List.copyOf(bundled.references().values());
        assertEquals(BUNDLED, LibraryDigest.of(tables, references, bundled.referenceFarms()));
        for (Table table : bundled.tables()) {
            int row = random.nextInt(table.rows().size());
            int column = random.nextInt(table.schema().fields().size());
            Map<String, Table> changed = new TreeMap<>(tables);
            changed.put(table.schema().name(), changedAt(table, row, column));
            assertNotEquals(
                    BUNDLED,
                    LibraryDigest.of(changed, references, bundled.referenceFarms()),
                    () -> table.schema().path() + " row " + row + " column " + column);
        }
    }

    private static Table changedAt(Table table, int at, int column) {
        List<Row> rows = new ArrayList<>(table.rows());
        Row row = rows.get(at);
        List<String> cells = new ArrayList<>(table.schema().fields().stream()
                .map(field -> row.optional(field.name()).orElse(""))
                .toList());
        cells.set(column, cells.get(column) + "x");
        rows.set(at, new Row(row.place(), cells, row.overlaid()));
        return new Table(table.schema(), rows);
    }

    @Test
    void a_text_moved_into_the_next_cell_is_another_library() {
        assertEquals("Full text", copy.cell("grades.csv", "fulltext", "name"));
        assertEquals("Seen in the publication itself.", copy.cell("grades.csv", "fulltext", "description"));
        copy.set("grades.csv", "fulltext", "name", "Full textS");
        copy.set("grades.csv", "fulltext", "description", "een in the publication itself.");
        assertNotEquals(BUNDLED, copy.library().version().digest());
    }

    @Test
    void it_changes_with_a_source() throws IOException {
        ObjectMapper json = new ObjectMapper();
        ArrayNode sources = (ArrayNode) json.readTree(copy.text("sources.json"));
        ((ObjectNode) sources.get(0)).put("title", "Another title");
        copy.write("sources.json", sources.toString());
        assertNotEquals(BUNDLED, copy.library().version().digest());
    }
}
