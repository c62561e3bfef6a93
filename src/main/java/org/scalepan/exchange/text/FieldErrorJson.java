package org.scalepan.exchange.text;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.input.FieldError;

/** Errors of fields as a JSON list. */
public final class FieldErrorJson {
    private FieldErrorJson() {}

    public static ArrayNode of(List<FieldError> errors) {
        ArrayNode array = Json.array();
        for (FieldError error : errors) {
            ObjectNode one = array.addObject();
            Json.put(one, "parameter", error.parameter());
            Json.put(one, "pointer", error.pointer());
            one.put("message", error.message());
            if (!error.allowed().isEmpty()) {
                one.set("allowed", Json.texts(error.allowed()));
            }
            if (!error.didYouMean().isEmpty()) {
                one.set("did_you_mean", Json.texts(error.didYouMean()));
            }
        }
        return array;
    }
}
