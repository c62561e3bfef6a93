package org.scalepan.input;

import java.util.regex.Pattern;

/** Numbers so small that a double makes nought of them: {@code 1e-400} must not pass for 0. */
public final class Underflow {
    private static final Pattern NOT_NOUGHT = Pattern.compile("^[-0.]*+[1-9]");

    private Underflow() {}

    /** Whether a number was read as 0 and is written as another. */
    public static boolean happened(double read, String written) {
        return read == 0 && NOT_NOUGHT.matcher(written).find();
    }
}
