package org.scalepan.input;

/** What a single value may hold at most. */
public final class InputLimits {
    /** Characters of the value of a parameter. */
    public static final int PARAMETER_CHARACTERS = 2_000;
    /** Characters of a name or id in records. */
    public static final int FIELD_CHARACTERS = 200;

    private InputLimits() {}
}
