package org.scalepan.factors.loading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.scalepan.factors.table.Fault;

/** Where each value of a JSON file begins, so that a fault in it can be found. */
final class JsonLines {
    private final String place;
    private final Map<String, JsonLocation> begins = new HashMap<>();

    /**
     * @param place how the file is named to a person
     * @param text a file that can be parsed
     */
    JsonLines(String place, String text) {
        this.place = place;
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            while (parser.nextToken() != null) {
                JsonPointer pointer = parser.getParsingContext().pathAsPointer();
                begins.putIfAbsent(pointer.toString(), parser.currentTokenLocation());
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("the text was parsed before", e);
        }
    }

    /**
     * A fault at a value, or at the nearest one that it would stand in.
     *
     * @param pointer where the value stands, such as {@code /inputs/2/rows}
     */
    Fault fault(String pointer, String what, String right) {
        return at(pointer, (pointer.isEmpty() ? "/" : pointer) + ": " + what, right);
    }

    /** The same, where the words say by themselves what they are about. */
    Fault at(String pointer, String what, String right) {
        String there = pointer;
        while (!begins.containsKey(there) && !there.isEmpty()) {
            there = there.substring(0, there.lastIndexOf('/'));
        }
        JsonLocation at = begins.get(there);
        return new Fault(place, at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr(), what, right);
    }
}
