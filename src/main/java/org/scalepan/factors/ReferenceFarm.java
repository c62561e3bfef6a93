package org.scalepan.factors;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A reference farm: a production system whose inputs are published practice with their ranges, so that it tells what a typical farm
 * of its kind would give. It is no study and stands for nobody's farm.
 *
 * @param id file name without its ending
 * @param name what it is in a sentence, such as "house crickets in an ambient tropical farm"
 * @param sentence what is reared, in which climate, at what scale, what is fed, and what is not counted
 * @param product product id of what it sells
 * @param climate "tropical" or "temperate"
 * @param region region id of its grid and crops, where it is of one place
 * @param scale "small" or "large"
 * @param defaults for which products and climates it is the one to be used; at most one farm for each
 * @param inputs what stands behind every number of the system
 * @param uncounted inputs that nobody has published, and that are left out
 * @param drawnTogether fields whose ranges follow one another, such as the lines of one feed mix: the ratio of the ends is the same
 *     in all of them, so that one draw serves all
 * @param system the system of a request, as JSON text, in which a number may be a range [low, high] or [low, best guess, high]
 */
public record ReferenceFarm(
        String id,
        String name,
        String sentence,
        String product,
        String climate,
        Optional<String> region,
        String scale,
        List<DefaultPlace> defaults,
        List<PracticeInput> inputs,
        List<UncountedInput> uncounted,
        List<List<String>> drawnTogether,
        String system) {

    public ReferenceFarm {
        defaults = List.copyOf(defaults);
        inputs = List.copyOf(inputs);
        uncounted = List.copyOf(uncounted);
        drawnTogether = drawnTogether.stream().map(List::copyOf).toList();
    }

    /** The ids of the products that it is a farm of. */
    public Set<String> products() {
        return Stream.concat(Stream.of(product), defaults.stream().map(DefaultPlace::product))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** A product and a climate that a farm is the default for. */
    public record DefaultPlace(String product, String climate) {}

    /** Why an input has the number it has. */
    public enum PracticeBasis {
        /** Within what the rows print. */
        PUBLISHED("published"),
        /** A fact of the trade that nobody has published; told as such. */
        PRACTICE("practice"),
        /** The size the farm is scaled to, or a choice of method: nothing rests on it. */
        CHOSEN("chosen");

        private final String id;

        PracticeBasis(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }

        public static Optional<PracticeBasis> of(String id) {
            return Stream.of(values()).filter(basis -> basis.id.equals(id)).findFirst();
        }
    }

    /**
     * What stands behind one number of the system: {@code times} x the product of the groups of {@code rows} / that of {@code over}, where
     * a group spans from the least to the most that its rows print.
     *
     * @param field where the number stands, such as {@code feed.0.kg}
     * @param rows groups of row ids that are multiplied; none where it is practice or chosen
     * @param over groups of row ids that are divided by
     * @param times the size that the farm is scaled to, and exact conversions of units
     * @param grade the lowest grade of its rows; {@link Grade#MEMORY} for practice, empty where it is chosen
     * @param why how the number, and the ends of its range, follow from the rows; or the reasons where there are none
     */
    public record PracticeInput(
            String field,
            PracticeBasis basis,
            List<List<String>> rows,
            List<List<String>> over,
            double times,
            Optional<Grade> grade,
            String why) {
        public PracticeInput {
            rows = rows.stream().map(List::copyOf).toList();
            over = over.stream().map(List::copyOf).toList();
        }

        /** Ids of all rows behind it, each once. */
        public List<String> rowIds() {
            return Stream.concat(rows.stream(), over.stream())
                    .flatMap(List::stream)
                    .distinct()
                    .toList();
        }
    }

    /**
     * An input that is left out.
     *
     * @param field what is left out, as a field of the records
     * @param bounds ids of the indicators that it makes a lower bound of; none where it is a cut-off too small to matter
     */
    public record UncountedInput(String field, List<String> bounds, String why) {
        public UncountedInput {
            bounds = List.copyOf(bounds);
        }
    }
}
