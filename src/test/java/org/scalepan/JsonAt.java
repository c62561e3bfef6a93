package org.scalepan;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;

/**
 * What stands at a JSON Pointer (RFC 6901) of an answer. A field that is missing, or of another kind, fails the test: Jackson itself
 * reads a missing number as 0 and a missing text as "", so that two missing fields would be equal.
 */
public final class JsonAt {
    private JsonAt() {}

    /** Whatever stands at the pointer, null excepted. */
    public static JsonNode node(JsonNode root, String pointer) {
        return at(root, pointer, "a value", found -> !found.isNull());
    }

    public static double number(JsonNode root, String pointer) {
        return at(root, pointer, "a number", JsonNode::isNumber).doubleValue();
    }

    public static int integer(JsonNode root, String pointer) {
        return at(root, pointer, "a whole number", found -> found.isNumber() && found.canConvertToExactIntegral())
                .intValue();
    }

    public static String text(JsonNode root, String pointer) {
        return at(root, pointer, "a text", JsonNode::isTextual).textValue();
    }

    public static boolean flag(JsonNode root, String pointer) {
        return at(root, pointer, "true or false", JsonNode::isBoolean).booleanValue();
    }

    /** A text, a number or a truth value as it is written. */
    public static String scalar(JsonNode root, String pointer) {
        return at(root, pointer, "a scalar", found -> found.isValueNode() && !found.isNull())
                .asText();
    }

    /** The elements of a list; the list may be empty. */
    public static List<JsonNode> array(JsonNode root, String pointer) {
        return StreamSupport.stream(
                        at(root, pointer, "a list", JsonNode::isArray).spliterator(), false)
                .toList();
    }

    /** The elements of a list of texts. */
    public static List<String> texts(JsonNode root, String pointer) {
        return array(root, pointer).stream().map(element -> text(element, "")).toList();
    }

    private static JsonNode at(JsonNode root, String pointer, String kind, Predicate<JsonNode> isOfKind) {
        JsonNode found = root.at(JsonPointer.compile(pointer));
        if (found.isMissingNode() || !isOfKind.test(found)) {
            String place = pointer.isEmpty() ? "here" : "at " + pointer;
            throw new AssertionError("expected " + kind + " " + place + ", found "
                    + (found.isMissingNode() ? "nothing" : found) + (root.isMissingNode() ? "" : " in " + root));
        }
        return found;
    }
}
