package org.scalepan.web.render;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.scalepan.sheet.Cell;
import org.scalepan.sheet.NumberForm;

/**
 * One column of a sheet.
 *
 * @param head what it holds, in words
 * @param place where its cells come from in the JSON row
 * @param kind how its cells are shown
 * @param unit where a row says the unit of the cell; shown in the head where all rows have one unit
 */
public record SheetColumn(String head, JsonPointer place, ColumnKind kind, Optional<JsonPointer> unit) {
    private static final int NARROWEST = 8;
    private static final int WIDEST_WORD = 30;
    private static final int WIDEST_TEXT = 26;
    private static final int WIDEST_SENTENCE = 60;
    private static final int FIGURE = 9;

    /** How the cells of a column are shown. */
    public enum ColumnKind {
        TEXT,
        /** Broken into lines. */
        SENTENCE,
        /** With the digits that it was published with. */
        AS_PUBLISHED,
        /** With two significant figures, or whole. */
        FIGURE,
        /** As per cent. */
        SHARE,
        /** A share of random draws. */
        DRAWS
    }

    public static SheetColumn text(String head, String place) {
        return of(head, place, ColumnKind.TEXT);
    }

    public static SheetColumn sentence(String head, String place) {
        return of(head, place, ColumnKind.SENTENCE);
    }

    public static SheetColumn asPublished(String head, String place) {
        return of(head, place, ColumnKind.AS_PUBLISHED);
    }

    public static SheetColumn figure(String head, String place) {
        return of(head, place, ColumnKind.FIGURE);
    }

    public static SheetColumn share(String head, String place) {
        return of(head, place, ColumnKind.SHARE);
    }

    public static SheetColumn draws(String head, String place) {
        return of(head, place, ColumnKind.DRAWS);
    }

    /** A figure in the unit that the row names. */
    public static SheetColumn figure(String head, String place, String unit) {
        return new SheetColumn(head, pointer(place), ColumnKind.FIGURE, Optional.of(pointer(unit)));
    }

    private static SheetColumn of(String head, String place, ColumnKind kind) {
        return new SheetColumn(head, pointer(place), kind, Optional.empty());
    }

    private static JsonPointer pointer(String place) {
        return JsonPointer.compile(place.startsWith("/") ? place : "/" + place);
    }

    Cell headCell(List<JsonNode> rows) {
        return kind == ColumnKind.TEXT || kind == ColumnKind.SENTENCE
                ? Cell.head(head(rows))
                : Cell.headOfNumbers(head(rows));
    }

    /** The head; with the unit where the rows have one in common. */
    String head(List<JsonNode> rows) {
        List<String> units = unit.stream()
                .flatMap(at -> rows.stream().map(row -> row.at(at).asText()))
                .filter(text -> !text.isEmpty())
                .distinct()
                .toList();
        return units.size() == 1 ? head + " (" + units.get(0) + ")" : head;
    }

    Cell cell(JsonNode row) {
        JsonNode node = row.at(place);
        if (node.isNumber()) {
            double value = node.asDouble();
            return Cell.number(
                    value,
                    switch (kind) {
                        case FIGURE -> NumberForm.ofFigure(value);
                        case SHARE -> NumberForm.PERCENT;
                        case DRAWS -> NumberForm.DRAWS;
                        default -> NumberForm.AS_IT_IS;
                    });
        }
        String text = shown(node);
        return text.isEmpty() ? Cell.empty() : isLong(text) ? Cell.text(text).wrapped() : Cell.text(text);
    }

    private boolean isLong(String text) {
        return kind == ColumnKind.SENTENCE || text.length() > WIDEST_TEXT;
    }

    private static String shown(JsonNode node) {
        return node.isArray()
                ? StreamSupport.stream(node.spliterator(), false)
                        .map(JsonNode::asText)
                        .collect(Collectors.joining("; "))
                : node.asText();
    }

    boolean isEmpty(List<JsonNode> rows) {
        return rows.stream().allMatch(row -> shown(row.at(place)).isEmpty());
    }

    /** Wide enough for every word of the column, and for whole texts up to a limit, beyond which they are broken into lines. */
    int width(List<JsonNode> rows) {
        int widest = kind == ColumnKind.SENTENCE ? WIDEST_SENTENCE : WIDEST_TEXT;
        int width = Math.max(NARROWEST, 1 + longestWord(head(rows)));
        for (JsonNode row : rows) {
            JsonNode node = row.at(place);
            String text = shown(node);
            width = Math.max(
                    width, node.isNumber() ? FIGURE : Math.max(longestWord(text), Math.min(widest, text.length() + 2)));
        }
        return width;
    }

    private static int longestWord(String text) {
        return Math.min(
                WIDEST_WORD,
                2
                        + Stream.of(text.split(" ", -1))
                                .mapToInt(String::length)
                                .max()
                                .orElse(0));
    }
}
