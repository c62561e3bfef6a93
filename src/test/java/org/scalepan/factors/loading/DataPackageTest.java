package org.scalepan.factors.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;

/** How {@code datapackage.json} is written: one column of a table a line, so that a difference shows the column that changed. */
class DataPackageTest {
    private static final Path FILE = Path.of("factors", "datapackage.json");

    private static JsonNode written() throws IOException {
        return new ObjectMapper().readTree(Files.readString(FILE));
    }

    @Test
    void it_holds_one_column_a_line() throws IOException {
        List<String> wanted = Layout.of(written()).lines().toList();
        List<String> lines = Files.readAllLines(FILE);

        for (int i = 0; i < wanted.size(); i++) {
            assertEquals(wanted.get(i), i < lines.size() ? lines.get(i) : "", FILE + ":" + (i + 1));
        }
        assertEquals(Layout.of(written()), Files.readString(FILE));
    }

    /** Defaults of Tabular Data Resource, CSV Dialect and Table Schema; CR LF is the default end of a line, the tables have LF. */
    @Test
    void it_does_not_repeat_what_holds_by_default() throws IOException {
        for (JsonNode resource : written().path("resources")) {
            String name = JsonAt.text(resource, "/name");

            assertEquals(
                    "{\"lineTerminator\":\"\\n\"}", resource.path("dialect").toString(), name);
            assertFalse(resource.has("encoding"), () -> name + " says that it is UTF-8");
            assertFalse(
                    resource.path("schema").has("missingValues"), () -> name + " says that an empty cell is absent");
        }
    }

    /**
     * Each entry of a list of objects on a line of its own; of an object that holds such a list, what names it on its first line and each
     * other property on a line of its own.
     */
    private static final class Layout {
        private static final String STEP = "  ";

        static String of(JsonNode root) {
            return lines(root, "") + "\n";
        }

        private static String lines(JsonNode node, String indent) {
            boolean top = indent.length() <= STEP.length();
            if (!node.isContainerNode() || (!top && !holdsObjectsInLists(node))) {
                return oneLine(node);
            }
            String inner = indent + STEP;
            List<String> parts = new ArrayList<>();
            if (node.isArray()) {
                node.forEach(entry -> parts.add(inner + lines(entry, inner)));
                return "[\n" + String.join(",\n", parts) + "\n" + indent + "]";
            }
            StringBuilder naming = new StringBuilder();
            boolean isNaming = node.has("description");
            for (Map.Entry<String, JsonNode> property : node.properties()) {
                isNaming = isNaming && !property.getKey().equals("description");
                if (isNaming) {
                    naming.append(naming.isEmpty() ? "" : " ")
                            .append(property(property, oneLine(property.getValue())))
                            .append(',');
                } else {
                    parts.add(inner + property(property, lines(property.getValue(), inner)));
                }
            }
            return "{" + naming + "\n" + String.join(",\n", parts) + "\n" + indent + "}";
        }

        private static String property(Map.Entry<String, JsonNode> property, String value) {
            return TextNode.valueOf(property.getKey()) + ": " + value;
        }

        private static String oneLine(JsonNode node) {
            List<String> parts = new ArrayList<>();
            if (node.isArray()) {
                node.forEach(entry -> parts.add(oneLine(entry)));
                return "[" + String.join(", ", parts) + "]";
            }
            if (node.isObject()) {
                node.properties().forEach(property -> parts.add(property(property, oneLine(property.getValue()))));
                return "{" + String.join(", ", parts) + "}";
            }
            return node.isNumber() ? node.decimalValue().stripTrailingZeros().toPlainString() : node.toString();
        }

        private static boolean holdsObjectsInLists(JsonNode node) {
            return StreamSupport.stream(node.spliterator(), false)
                    .anyMatch(part -> (node.isArray() && part.isObject()) || holdsObjectsInLists(part));
        }
    }
}
