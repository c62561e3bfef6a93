package org.scalepan.cite;

import java.util.regex.Pattern;

/** Text as one printable line. Line-based formats end a record at a line break, so no field may carry one. */
final class OneLine {
    // Control characters and the Unicode separators (categories Cc, Zl, Zp, Zs), of which some readers make a new line.
    private static final Pattern BREAKS = Pattern.compile("[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}\\p{Zs}\\uFFFE\\uFFFF]+");

    private OneLine() {}

    /** The text with every run of spaces, line breaks and control characters as one space, and none at the ends. */
    static String of(String text) {
        return BREAKS.matcher(text).replaceAll(" ").strip();
    }

    /** True if nothing printable is left. */
    static boolean isEmpty(String text) {
        return of(text).isEmpty();
    }
}
