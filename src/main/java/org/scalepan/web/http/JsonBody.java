package org.scalepan.web.http;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.scalepan.input.FieldError;

/** Parses a JSON text strictly: UTF-8 only, no duplicate keys, nothing after it, and within the limits of depth and length. */
public final class JsonBody {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(new JsonLimits())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private JsonBody() {}

    static JsonNode parse(byte[] bytes) {
        try {
            return parse(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            throw refused("the body is not UTF-8");
        }
    }

    public static JsonNode parse(String text) {
        if (text.isBlank()) {
            throw refused("the body is empty; it must be a JSON object");
        }
        try {
            JsonNode node = MAPPER.readTree(text);
            refuseInfinite(node);
            return node;
        } catch (StreamConstraintsException e) {
            throw new ProblemException(
                    Problem.badBody(List.of(FieldError.at("", e.getOriginalMessage(), List.of(), List.of())
                            .ofTooMuch())));
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
        node.forEach(JsonBody::refuseInfinite);
    }

    private static ProblemException refused(String detail) {
        return new ProblemException(Problem.badBody(List.of(FieldError.at("", detail, List.of(), List.of()))));
    }
}
