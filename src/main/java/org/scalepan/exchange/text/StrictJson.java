package org.scalepan.exchange.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import org.scalepan.input.FieldError;

/** Parses a JSON text strictly: no duplicate keys, nothing after it, and within the limits of depth and length. */
public final class StrictJson {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(new JsonLimits())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private StrictJson() {}

    /**
     * Parses a text.
     *
     * @throws RefusedText when it is not JSON or beyond a limit
     */
    public static JsonNode parse(String text) {
        if (text.isBlank()) {
            throw refused("the body is empty; it must be a JSON object");
        }
        try {
            JsonNode node = MAPPER.readTree(text);
            refuseInfinite(node);
            return node;
        } catch (StreamConstraintsException e) {
            throw new RefusedText(FieldError.at("", e.getOriginalMessage(), List.of(), List.of())
                    .ofTooMuch());
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null
                    ? ""
                    : " at line " + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr();
            throw refused("the body is not JSON" + where);
        }
    }

    /** A number such as 1e999 is valid JSON but not finite. */
    private static void refuseInfinite(JsonNode node) {
        if (node.isNumber() && !Double.isFinite(node.asDouble())) {
            throw refused("a number in the body is too large");
        }
        node.forEach(StrictJson::refuseInfinite);
    }

    private static RefusedText refused(String detail) {
        return new RefusedText(FieldError.at("", detail, List.of(), List.of()));
    }
}
