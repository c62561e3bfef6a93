package org.scalepan.factors.table;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * The schema of one CSV table as {@code datapackage.json} gives it.
 *
 * @see <a href="https://specs.frictionlessdata.io/table-schema/">Frictionless Table Schema</a>
 */
public record TableSchema(
        String name, String path, List<Field> fields, String primaryKey, List<ForeignKey> foreignKeys) {

    public TableSchema {
        fields = List.copyOf(fields);
        foreignKeys = List.copyOf(foreignKeys);
    }

    /** What a column holds. */
    public enum Type {
        STRING,
        NUMBER,
        INTEGER
    }

    /**
     * One column.
     *
     * @param list separator when a cell holds several ids, as {@code ;} does
     * @param citesSource true when the column holds ids of {@code sources.json}
     */
    public record Field(
            String name,
            Type type,
            String description,
            boolean required,
            boolean unique,
            List<String> allowed,
            OptionalDouble minimum,
            OptionalDouble maximum,
            Optional<Pattern> pattern,
            Optional<String> list,
            boolean citesSource) {
        public Field {
            allowed = List.copyOf(allowed);
        }
    }

    /** A column whose cells must be ids of another table. An empty {@code resource} means this table itself. */
    public record ForeignKey(String field, String resource, String referenced) {}

    /** Reads every table of a {@code datapackage.json}. */
    public static List<TableSchema> readAll(JsonNode dataPackage) {
        List<TableSchema> tables = new ArrayList<>();
        for (JsonNode resource : dataPackage.path("resources")) {
            if (resource.path("path").asText().endsWith(".csv")) {
                tables.add(read(resource));
            }
        }
        return List.copyOf(tables);
    }

    private static TableSchema read(JsonNode resource) {
        JsonNode schema = resource.path("schema");
        List<Field> fields = new ArrayList<>();
        for (JsonNode field : schema.path("fields")) {
            fields.add(field(field));
        }
        List<ForeignKey> keys = new ArrayList<>();
        // Table Schema's foreign keys are for whole cells; a column that holds a list of ids says so on the field
        // itself.
        for (JsonNode field : schema.path("fields")) {
            JsonNode reference = field.path("foreignKey");
            if (!reference.isMissingNode()) {
                keys.add(new ForeignKey(
                        field.path("name").asText(),
                        reference.path("resource").asText(),
                        single(reference.path("fields"))));
            }
        }
        for (JsonNode key : schema.path("foreignKeys")) {
            JsonNode reference = key.path("reference");
            keys.add(new ForeignKey(
                    single(key.path("fields")), reference.path("resource").asText(), single(reference.path("fields"))));
        }
        return new TableSchema(
                resource.path("name").asText(),
                resource.path("path").asText(),
                fields,
                single(schema.path("primaryKey")),
                keys);
    }

    private static Field field(JsonNode field) {
        JsonNode constraints = field.path("constraints");
        List<String> allowed = new ArrayList<>();
        constraints.path("enum").forEach(value -> allowed.add(value.asText()));
        return new Field(
                field.path("name").asText(),
                type(field.path("type").asText("string")),
                field.path("description").asText(),
                constraints.path("required").asBoolean(),
                constraints.path("unique").asBoolean(),
                allowed,
                number(constraints.path("minimum")),
                number(constraints.path("maximum")),
                text(constraints.path("pattern")).map(Pattern::compile),
                text(field.path("list")),
                field.path("source").asBoolean());
    }

    private static Type type(String name) {
        return switch (name) {
            case "number" -> Type.NUMBER;
            case "integer" -> Type.INTEGER;
            default -> Type.STRING;
        };
    }

    private static OptionalDouble number(JsonNode node) {
        return node.isNumber() ? OptionalDouble.of(node.asDouble()) : OptionalDouble.empty();
    }

    private static Optional<String> text(JsonNode node) {
        return node.isTextual() ? Optional.of(node.asText()) : Optional.empty();
    }

    /** Table Schema allows a key to be a name or a list of names; this library uses single columns only. */
    private static String single(JsonNode node) {
        return node.isArray() ? node.path(0).asText() : node.asText();
    }
}
