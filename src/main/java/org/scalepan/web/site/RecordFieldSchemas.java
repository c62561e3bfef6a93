package org.scalepan.web.site;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.input.InputLimits;
import org.scalepan.production.FieldDefinition;
import org.scalepan.production.FieldKind;
import org.scalepan.production.RecordField;
import org.scalepan.quantity.SevenDigits;

/**
 * Writes the fields of the records into the OpenAPI description, from the table of fields that also reads them. A comment {@code # fields
 * feed.#} stands for all fields of an object, {@code # fields insects} and the like for those of the records themselves, {@code
 * # field harvest.larvae} for one. Fields without a description in the table have their schema in the file.
 */
final class RecordFieldSchemas {
    private static final Pattern PLACE = Pattern.compile("(?md)^( *)# field(s?) (\\S+)\\n");

    private RecordFieldSchemas() {}

    /** A text of the description with the schemas of fields in place of the comments. */
    static String filled(String text) {
        return PLACE.matcher(text)
                .replaceAll(place -> Matcher.quoteReplacement(
                        fields(place.group(3), !place.group(2).isEmpty())
                                .filter(field -> field.description().isPresent())
                                .map(field -> schema(field, place.group(1)))
                                .collect(Collectors.joining())));
    }

    private static Stream<FieldDefinition> fields(String name, boolean all) {
        Stream<FieldDefinition> every = Stream.of(RecordField.values()).map(RecordField::definition);
        if (!all) {
            return every.filter(field -> field.path().equals(name));
        }
        for (FieldDefinition.SystemKind kind : FieldDefinition.SystemKind.values()) {
            if (kind.id().equals(name)) {
                return every.filter(field -> field.owner().isEmpty() && field.isOf(kind));
            }
        }
        return every.filter(field -> field.owner().equals(name));
    }

    private static String schema(FieldDefinition field, String indent) {
        StringBuilder lines = new StringBuilder(indent + field.field() + ":\n");
        String inner = indent + "  ";
        lines.append(inner).append(type(field.kind())).append('\n');
        lines.append(inner)
                .append("description: ")
                .append(quoted(field.description().orElseThrow()))
                .append('\n');
        if (field.kind().isNumber()) {
            String least = "minimum: " + SevenDigits.plain(field.least());
            String most = "maximum: " + SevenDigits.plain(field.most());
            lines.append(inner).append(least).append('\n');
            lines.append(inner).append(most).append('\n');
            if (field.kind() == FieldKind.NUMBER) {
                // The ends of a range have the same limits.
                lines.append(inner)
                        .append("items: {")
                        .append(least)
                        .append(", ")
                        .append(most)
                        .append("}\n");
            }
        } else if (!field.words().isEmpty()) {
            lines.append(inner).append("x-vocabulary: fixed\n");
            lines.append(inner)
                    .append("enum: [")
                    .append(field.words().stream()
                            .map(RecordFieldSchemas::quoted)
                            .collect(Collectors.joining(", ")))
                    .append("]\n");
        } else {
            lines.append(inner).append("minLength: 1\n");
            lines.append(inner)
                    .append("maxLength: ")
                    .append(InputLimits.FIELD_CHARACTERS)
                    .append('\n');
            if (field.kind() == FieldKind.TEXT) {
                lines.append(inner).append("pattern: \\S\n");
            }
        }
        field.usual()
                .ifPresent(value -> lines.append(inner)
                        .append("default: ")
                        .append(field.kind().isNumber() ? value : quoted(value))
                        .append('\n'));
        return lines.toString();
    }

    private static String type(FieldKind kind) {
        return switch (kind) {
            case NUMBER -> "$ref: '#/components/schemas/RecordedNumber'";
            case WHOLE_NUMBER -> "type: integer";
            case TEXT, WORD -> "type: string";
        };
    }

    /** A text as YAML 1.1 and 1.2 read it as a text, whatever stands in it. */
    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
