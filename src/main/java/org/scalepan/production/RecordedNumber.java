package org.scalepan.production;

import java.util.Optional;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.LogUniform;
import org.scalepan.uncertainty.Triangular;
import org.scalepan.uncertainty.Uniform;

/**
 * A number of somebody's records: known, or remembered as a range with or without a best guess. A range is drawn like a factor,
 * under the name of the system and the path of the field: the same record of the same system is drawn once, wherever it stands in a
 * question or a table.
 *
 * <p>Source: JCGM 101:2008 (GUM Supplement 1), 6.4, assigns a distribution by what is known of a quantity: between limits alone the
 * rectangular one, here of the logarithm where all of the range is above zero.
 *
 * @param central the number; of a range its median
 * @param factor what is drawn where it is uncertain
 */
public record RecordedNumber(double central, Optional<Factor> factor) {
    private static final String KEYS = "records/";

    /** A number that is known. */
    public static RecordedNumber of(double value) {
        return new RecordedNumber(value, Optional.empty());
    }

    /** The same where a number may be left open. */
    public static Optional<RecordedNumber> known(double value) {
        return Optional.of(of(value));
    }

    /**
     * The key under which a record is drawn.
     *
     * @param system what the records call the farm or herd
     * @param path the path of the field in the records, with the places of lists counted from 0, such as {@code feed.0.kg}
     */
    public static String key(String system, String path) {
        return KEYS + system + "/" + path;
    }

    /** True for the key of a record. */
    public static boolean isKey(String id) {
        return id.startsWith(KEYS);
    }

    /** The system of a key. */
    public static String systemOf(String key) {
        return key.substring(KEYS.length(), key.lastIndexOf('/'));
    }

    /** The path of a key. */
    public static String pathOf(String key) {
        return key.substring(key.lastIndexOf('/') + 1);
    }

    /**
     * Anything from low to high: each doubling alike, or of a share and where the range reaches zero each value alike
     * as another.
     *
     * @param low below high
     */
    public static RecordedNumber between(String key, RecordField field, double low, double high) {
        return low > 0 && !field.isShare()
                ? uncertain(key, new LogUniform(low, high), StrictMath.log(high / low) / Math.sqrt(12), true)
                : uncertain(key, new Uniform(low, high), (high - low) / Math.sqrt(12), false);
    }

    /**
     * From low to high, and most likely near the mode.
     *
     * @param low below high
     * @param mode from low to high
     */
    public static RecordedNumber around(String key, double low, double mode, double high) {
        // By differences, because squares of large numbers in a narrow range cancel to less than nothing.
        double width = high - low;
        double below = mode - low;
        double variance = (width * width - width * below + below * below) / 18;
        return uncertain(key, new Triangular(low, mode, high), Math.sqrt(variance), false);
    }

    /** The standard deviation is that of the logarithm, or relative to the median; of a median of 0 only 1 can stand for it. */
    private static RecordedNumber uncertain(String key, Distribution reading, double sd, boolean logarithmic) {
        double median = reading.median();
        double relative = logarithmic ? sd : median == 0 ? 1 : sd / Math.abs(median);
        return new RecordedNumber(median, Optional.of(new Factor(key, reading, Optional.empty(), median, relative)));
    }

    /** True for a single number. */
    public boolean isKnown() {
        return factor.isEmpty();
    }

    /** The least that it may be. */
    public double least() {
        return factor.map(one -> one.reading().quantile(0)).orElse(central);
    }

    /** The most that it may be. */
    public double most() {
        return factor.map(one -> one.reading().quantile(1)).orElse(central);
    }

    /** The number in a product. */
    public ActivityTerm term() {
        return factor.map(one -> ActivityTerm.of(1).times(one)).orElseGet(() -> ActivityTerm.of(central));
    }

    /** The same, or another number where there is none. */
    static ActivityTerm termOr(Optional<RecordedNumber> number, double otherwise) {
        return number.map(RecordedNumber::term).orElseGet(() -> ActivityTerm.of(otherwise));
    }

    /** The central value, or another number where there is none. */
    public static double centralOr(Optional<RecordedNumber> number, double otherwise) {
        return number.isPresent() ? number.get().central() : otherwise;
    }
}
