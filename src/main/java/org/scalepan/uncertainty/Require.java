package org.scalepan.uncertainty;

/**
 * The conditions a number must meet before it may enter a distribution; NaN meets none of them. A number that meets the condition is
 * returned; one that does not is an {@link IllegalArgumentException} that names it.
 */
public final class Require {
    private Require() {}

    public static double finite(String name, double value) {
        return met(Double.isFinite(value), name, "finite", value);
    }

    public static double positive(String name, double value) {
        return met(Double.isFinite(value) && value > 0, name, "positive and finite", value);
    }

    public static double notNegative(String name, double value) {
        return met(Double.isFinite(value) && value >= 0, name, "zero or more and finite", value);
    }

    static double atLeastOne(String name, double value) {
        return met(Double.isFinite(value) && value >= 1, name, "1 or more and finite", value);
    }

    public static double probability(double value) {
        return met(value >= 0 && value <= 1, "probability", "within 0 and 1", value);
    }

    public static double innerProbability(double value) {
        return met(value > 0 && value < 1, "probability", "between 0 and 1, both excluded", value);
    }

    static void ascending(String lowName, double low, String highName, double high) {
        finite(lowName, low);
        finite(highName, high);
        if (!(low < high)) {
            throw new IllegalArgumentException(lowName + " must be below " + highName + ", but " + lowName + " is "
                    + low + " and " + highName + " is " + high);
        }
    }

    /** Draws are filled in place; the output may be a prefix of the scores, never longer. */
    static void noLonger(double[] scores, double[] out) {
        if (out.length > scores.length) {
            throw new IllegalArgumentException(
                    out.length + " draws asked for, but only " + scores.length + " scores given");
        }
    }

    public static void sameLength(String firstName, double[] first, String secondName, double[] second) {
        if (first.length != second.length) {
            throw new IllegalArgumentException(firstName + " and " + secondName + " must be equally many, not "
                    + first.length + " and " + second.length);
        }
    }

    public static void allFinite(String name, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(name + " " + i + " must be finite, not " + values[i]);
            }
        }
    }

    private static double met(boolean condition, String name, String wanted, double value) {
        if (!condition) {
            throw new IllegalArgumentException(name + " must be " + wanted + ", not " + value);
        }
        return value;
    }
}
