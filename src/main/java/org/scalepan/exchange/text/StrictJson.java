package org.scalepan.exchange.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.input.Excerpt;
import org.scalepan.input.FieldError;
import org.scalepan.input.Underflow;

/** Parses a JSON text strictly: no duplicate keys, nothing after it, and within the limits of depth and length. */
public final class StrictJson {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(new JsonLimits())
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** How the parser tells of a field that an object has twice. */
    private static final Pattern TWICE = Pattern.compile("Duplicate field '(.*)'", Pattern.DOTALL);

    /** An escaped half without its other half; an escaped backslash before it makes it plain text. */
    private static final Pattern HALF = Pattern.compile(
            "(?<!\\\\)(?:\\\\\\\\)*(?:\\\\u[dD][89abAB]..(?!\\\\u[dD][c-fC-F])|(?<!\\\\u[dD][89abAB]..)\\\\u[dD][c-fC-F])");

    /** A number that may be too small for a double. */
    private static final Pattern SMALL = Pattern.compile("[0-9][eE]-\\d{3}|0\\.0{300}");

    private StrictJson() {}

    /**
     * Parses a text.
     *
     * @throws RefusedText when it is not JSON or beyond a limit
     */
    public static JsonNode parse(String text) {
        if (text.startsWith("\uFEFF")) {
            throw refused("the body begins with a byte-order mark; send UTF-8 without one");
        }
        if (text.isBlank()) {
            throw refused("the body is empty; it must be a JSON object");
        }
        try {
            JsonNode node = MAPPER.readTree(text);
            refuseInfinite(node);
            refuseHalves(text);
            refuseLost(text);
            return node;
        } catch (StreamConstraintsException e) {
            throw new RefusedText(FieldError.at("", e.getOriginalMessage(), List.of(), List.of())
                    .ofTooMuch());
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null
                    ? ""
                    : " at line " + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr();
            Matcher twice = TWICE.matcher(e.getOriginalMessage());
            throw refused(
                    twice.matches()
                            ? "the field \"" + Excerpt.of(twice.group(1)) + "\" stands twice" + where
                            : "the body is not JSON" + where);
        }
    }

    /** Half of a surrogate pair, as an escape can write it, is no character: no answer in UTF-8 can give it back. */
    private static void refuseHalves(String text) {
        if (text.contains("\\u") && HALF.matcher(text).find()) {
            throw refused("a text in the body has half of a character, such as \\ud800 alone");
        }
    }

    /** A number such as 1e-400 is valid JSON, and not the 0 that a double makes of it. */
    private static void refuseLost(String text) throws JsonProcessingException {
        if (!SMALL.matcher(text).find()) {
            return;
        }
        try (JsonParser parser = MAPPER.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_NUMBER_FLOAT
                        && Underflow.happened(parser.getDoubleValue(), parser.getText())) {
                    throw refused("the number " + Excerpt.of(parser.getText()) + " at line "
                            + parser.currentTokenLocation().getLineNr()
                            + " is too small; write 0 or a number of at least 1e-300");
                }
            }
        } catch (JsonProcessingException e) {
            throw e;
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory can be read", e);
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
