package org.scalepan.factors;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.scalepan.factors.table.Table;

/**
 * What is assumed where a number was published without a spread: a basic geometric standard deviation, raised by pedigree
 * scores. An answer that uses it says {@code assumed-spread}.
 */
public final class SpreadDefaults {
    /** The set whose factors are contributions to GSD², as in Frischknecht et al. 2005. */
    public static final String PEDIGREE_SET = "frischknecht-2005";

    public static final List<String> CRITERIA =
            List.of("reliability", "completeness", "technology", "time", "geography");

    private final double result;
    private final double composition;
    private final double betweenStudies;
    private final Map<String, Double> squaredFactors;

    private SpreadDefaults(
            double result, double composition, double betweenStudies, Map<String, Double> squaredFactors) {
        this.result = result;
        this.composition = composition;
        this.betweenStudies = betweenStudies;
        this.squaredFactors = Map.copyOf(squaredFactors);
    }

    static SpreadDefaults of(Table defaults, Table pooling, Table pedigree) {
        Map<String, Double> gsd = new HashMap<>();
        defaults.rows()
                .forEach(
                        row -> gsd.put(row.text("applies_to"), row.number("gsd").orElseThrow()));
        Map<String, Double> scales = new HashMap<>();
        pooling.rows()
                .forEach(row ->
                        scales.put(row.text("quantity"), row.number("scale").orElseThrow()));
        Map<String, Double> factors = new HashMap<>();
        pedigree.rows().stream()
                .filter(row -> row.text("set").equals(PEDIGREE_SET))
                .forEach(row -> factors.put(
                        key(row.text("criterion"), row.integer("score").orElseThrow()),
                        row.number("factor").orElseThrow()));
        return new SpreadDefaults(
                need(gsd, "result"), need(gsd, "composition"), need(scales, "between-studies"), factors);
    }

    private static double need(Map<String, Double> gsd, String what) {
        Double value = gsd.get(what);
        if (value == null) {
            throw new IllegalStateException(
                    "the loader let a library without a default spread of " + what + " through");
        }
        return value;
    }

    /** Basic GSD of a published result without a spread. */
    public double result() {
        return result;
    }

    /**
     * Scale of the half-normal prior of the standard deviation between studies of one product, of the natural logarithm of a footprint.
     */
    public double betweenStudies() {
        return betweenStudies;
    }

    /** GSD of a composition figure without a spread. */
    public double composition() {
        return composition;
    }

    /**
     * The contribution of one pedigree score to GSD².
     *
     * @param criterion reliability, completeness, time, geography or technology
     * @param score 1 to 5; a score that the published set leaves out takes the next worse one, an absent score counts 1
     * @return factor of at least 1
     */
    public double squaredFactor(String criterion, OptionalInt score) {
        if (score.isEmpty()) {
            return 1;
        }
        for (int worse = score.getAsInt(); worse <= 5; worse++) {
            Double factor = squaredFactors.get(key(criterion, worse));
            if (factor != null) {
                return factor;
            }
        }
        return 1;
    }

    private static String key(String criterion, int score) {
        return criterion + "/" + score;
    }
}
