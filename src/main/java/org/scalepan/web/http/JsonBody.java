package org.scalepan.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.scalepan.exchange.text.RefusedText;
import org.scalepan.exchange.text.StrictJson;
import org.scalepan.input.FieldError;

/** Parses a JSON body strictly, and UTF-8 only; what cannot be read is a problem. */
public final class JsonBody {
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
            throw new ProblemException(
                    Problem.badBody(List.of(FieldError.at("", "the body is not UTF-8", List.of(), List.of()))));
        }
    }

    public static JsonNode parse(String text) {
        try {
            return StrictJson.parse(text);
        } catch (RefusedText refused) {
            throw new ProblemException(Problem.badBody(refused.errors()));
        }
    }
}
