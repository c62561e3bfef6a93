package org.scalepan.web.http;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.scalepan.input.Excerpt;
import org.scalepan.input.FieldError;

/**
 * Reads a query string strictly: a bad percent escape, bytes that are not UTF-8 or a repeated name is an error, where the framework would
 * silently drop or choose one.
 */
public final class QueryString {

    private QueryString() {}

    public static Map<String, String> read(@Nullable String raw) {
        Map<String, String> values = new LinkedHashMap<>();
        List<FieldError> errors = new ArrayList<>();
        if (raw == null || raw.isEmpty()) {
            return values;
        }
        if (raw.indexOf('\uFFFD') >= 0) {
            // The server puts this sign in place of raw bytes that are not UTF-8.
            throw new ProblemException(Problem.badQuery(List.of(notUtf8())));
        }
        String[] pairs = raw.split("&", Limits.PARAMETERS + 1);
        if (pairs.length > Limits.PARAMETERS) {
            String message = "the query string has more than " + Limits.PARAMETERS + " parameters";
            throw new ProblemException(Problem.badQuery(List.of(new FieldError(
                            java.util.Optional.empty(), java.util.Optional.empty(), message, List.of(), List.of())
                    .ofTooMuch())));
        }
        for (String pair : pairs) {
            if (pair.isEmpty()) {
                continue;
            }
            int equals = pair.indexOf('=');
            try {
                String name = decode(equals < 0 ? pair : pair.substring(0, equals));
                String value = equals < 0 ? "" : decode(pair.substring(equals + 1));
                if (values.putIfAbsent(name, value) != null) {
                    errors.add(FieldError.of(
                            name,
                            "parameter \"" + Excerpt.of(name)
                                    + "\" is given twice; give several values as one comma list"));
                }
            } catch (CharacterCodingException | IllegalArgumentException e) {
                errors.add(notUtf8());
            }
        }
        if (!errors.isEmpty()) {
            throw new ProblemException(Problem.badQuery(errors));
        }
        return values;
    }

    private static FieldError notUtf8() {
        return new FieldError(
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                "the query string has a part that is not percent-encoded UTF-8",
                List.of(),
                List.of());
    }

    private static String decode(String text) throws CharacterCodingException {
        ByteBuffer bytes = ByteBuffer.allocate(text.length() * 3);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '+') {
                bytes.put((byte) ' ');
            } else if (c == '%') {
                bytes.put(hex(text, i + 1));
                i += 2;
            } else {
                bytes.put(String.valueOf(c).getBytes(StandardCharsets.UTF_8));
            }
        }
        bytes.flip();
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .decode(bytes)
                .toString();
    }

    private static byte hex(String text, int at) {
        if (at + 2 > text.length()) {
            throw new IllegalArgumentException("cut off");
        }
        int high = Character.digit(text.charAt(at), 16);
        int low = Character.digit(text.charAt(at + 1), 16);
        if (high < 0 || low < 0) {
            throw new IllegalArgumentException("not hexadecimal");
        }
        return (byte) (high << 4 | low);
    }
}
