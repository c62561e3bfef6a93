package org.scalepan.web.http;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Strong entity tags (RFC 9110, section 8.8.3), derived from the bytes of the response. */
public final class EntityTag {
    private static final String ONE = "(?:W/)?(\"[\\x21\\x23-\\x7e\\x80-\\xff]*+\")";
    private static final Pattern TAG = Pattern.compile(ONE);
    /** A list in a header may have empty elements (section 5.6.1). */
    private static final Pattern LIST =
            Pattern.compile("[ \\t]*+(?:" + ONE + ")?+(?:[ \\t]*+,[ \\t]*+(?:" + ONE + ")?+)*+[ \\t]*+");

    private EntityTag() {}

    static String of(byte[] body) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(body);
            return '"' + HexFormat.of().formatHex(hash, 0, 16) + '"';
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    /** Whether an If-None-Match header matches the tag, by weak comparison (section 13.1.2); what is no list of tags matches none. */
    public static boolean matches(String ifNoneMatch, String tag) {
        if (ifNoneMatch.strip().equals("*")) {
            return true;
        }
        if (!LIST.matcher(ifNoneMatch).matches()) {
            return false;
        }
        Matcher matcher = TAG.matcher(ifNoneMatch);
        while (matcher.find()) {
            if (tag.equals(matcher.group(1))) {
                return true;
            }
        }
        return false;
    }
}
