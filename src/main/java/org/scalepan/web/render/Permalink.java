package org.scalepan.web.render;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;

/**
 * A relative reference that repeats a question on the same library: every parameter resolved, pinned by the library's digest. Relative,
 * because a host name sent by a client must never appear in a link.
 */
public final class Permalink {
    private Permalink() {}

    public static String of(Library library, String path, Map<String, Object> question) {
        String link = unpinned(path, question);
        return link + (question.isEmpty() ? '?' : '&') + "library="
                + library.version().digest();
    }

    /** An address with parameters, on whatever library is served. */
    public static String unpinned(String path, Map<String, Object> question) {
        StringBuilder link = new StringBuilder(path);
        char joint = '?';
        for (Map.Entry<String, Object> parameter : question.entrySet()) {
            link.append(joint).append(parameter.getKey()).append('=').append(value(parameter.getValue()));
            joint = '&';
        }
        return link.toString();
    }

    private static String value(Object value) {
        if (value instanceof List<?> list) {
            return encoded(String.join(",", list.stream().map(String::valueOf).toList()));
        }
        return value instanceof Double number ? Input.plain(number) : encoded(String.valueOf(value));
    }

    private static String encoded(String text) {
        // Commas and colons are legal in a query and keep the link readable.
        return URLEncoder.encode(text, StandardCharsets.UTF_8)
                .replace("%2C", ",")
                .replace("%3A", ":")
                .replace("+", "%20");
    }
}
