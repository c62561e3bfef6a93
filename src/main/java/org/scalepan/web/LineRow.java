package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The line of JSON that is being answered. */
final class LineRow implements PlannedAnswers.Row {
    private static final String NAME = "name";
    /** What stands in a shape in place of a field's name where something begins; the names are counted from 1. */
    private static final int OBJECT = -1;

    private static final int LIST = -2;
    private static final int AMOUNT = -3;
    private static final int WORD = -4;

    private final BulkQuestion question;
    private final JsonNode records;
    private final WordNumbers words;
    private final RowShape shape;
    private double[] amounts = new double[32];
    private int count;
    private @Nullable Map<String, Integer> places;

    /**
     * @param words the words of the lines before it
     * @param shape filled in here
     */
    LineRow(BulkQuestion question, JsonNode records, WordNumbers words, RowShape shape) {
        this.question = question;
        this.records = records;
        this.words = words;
        this.shape = shape;
    }

    @Override
    public boolean read() {
        shape.clear();
        count = 0;
        return isNamedWell() && read(records, true);
    }

    private boolean isNamedWell() {
        JsonNode name = records.path(NAME);
        return name.isMissingNode()
                || (name.isTextual()
                        && !name.textValue().isBlank()
                        && name.textValue().length() <= Limits.FIELD_CHARACTERS);
    }

    /** Whether all inside is made of what records are made of. */
    private boolean read(JsonNode node, boolean outermost) {
        if (node.isObject()) {
            shape.add(OBJECT, node.size());
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                int word = words.of(field.getKey());
                shape.add(word, 0);
                boolean name = outermost && field.getKey().equals(NAME);
                if (word == 0 || !(name || read(field.getValue(), false))) {
                    return false;
                }
            }
            return true;
        }
        if (node.isArray()) {
            shape.add(LIST, node.size());
            for (JsonNode element : node) {
                if (!read(element, false)) {
                    return false;
                }
            }
            return true;
        }
        if (node.isNumber()) {
            shape.add(AMOUNT, 0);
            put(node.doubleValue());
            return true;
        }
        int word = node.isTextual() ? words.of(node.textValue()) : 0;
        shape.add(WORD, word);
        return word > 0;
    }

    private void put(double amount) {
        if (count == amounts.length) {
            amounts = Arrays.copyOf(amounts, 2 * count);
        }
        amounts[count++] = amount;
    }

    @Override
    public RowShape shape() {
        return shape;
    }

    @Override
    public double[] amounts() {
        return amounts;
    }

    @Override
    public Optional<String> name() {
        return records.has(NAME) ? Optional.of(records.path(NAME).textValue().strip()) : Optional.empty();
    }

    @Override
    public BulkRow answer(long number, Input.Entering entering) {
        return question.answer(number, records, entering);
    }

    @Override
    public int place(String pointer) {
        if (places == null) {
            places = new HashMap<>();
            place(records, "", places);
        }
        return java.util.Objects.requireNonNull(places.get(pointer));
    }

    /** Counts the amounts in the order in which they are read. */
    private static void place(JsonNode node, String pointer, Map<String, Integer> places) {
        if (node.isNumber()) {
            places.put(pointer, places.size());
        }
        node.properties().forEach(field -> place(field.getValue(), Input.within(pointer, field.getKey()), places));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            place(node.get(i), pointer + "/" + i, places);
        }
    }
}
