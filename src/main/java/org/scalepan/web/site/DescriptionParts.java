package org.scalepan.web.site;

import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scalepan.web.http.FixedFile;

/**
 * Joins the OpenAPI description, which has one file per topic, into the one file that is served. The head has a comment {@code # part
 * paths/claim.yaml} where a part belongs; references within the description are those of the joined file, so that joining needs no YAML
 * parser. The fields of the records are filled in by {@link RecordFieldSchemas}.
 */
public final class DescriptionParts {
    private static final Pattern PART = Pattern.compile("(?md)^( *)# part (\\S+)\\n");
    private static final Pattern LINE = Pattern.compile("(?md)^(?=.)");

    private DescriptionParts() {}

    /**
     * The head with each part in place of its comment, indented like it.
     *
     * @param part the text of a part by its name
     */
    public static String joined(String head, UnaryOperator<String> part) {
        return PART.matcher(head)
                .replaceAll(named ->
                        Matcher.quoteReplacement(LINE.matcher(RecordFieldSchemas.filled(part.apply(named.group(2))))
                                .replaceAll(named.group(1))));
    }

    /** The same from the files in the jar. */
    static byte[] joined(byte[] head) {
        return joined(text(head), name -> text(FixedFile.bytes("/openapi/" + name)))
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] utf8) {
        return new String(utf8, StandardCharsets.UTF_8);
    }
}
