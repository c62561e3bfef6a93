package org.scalepan.ask.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.Print;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * Arithmetic of the asker's own prices beside the quantities of a programme: nothing is converted, discounted or checked.
 *
 * @param ofProduct what a year of the product is worth
 * @param ofDisplaced what the priced parts of what is displaced are worth a year
 * @param imported what of that would have been imported: the import bill avoided, for the parts that say their share
 * @param withoutPrice the parts that no price was given for
 * @param withoutImports the parts that no imported share was given for
 * @param perTonne cost per tonne CO2e avoided, only where the whole interval avoids something
 * @param whyNotPerTonne why there is none, when a cost was given
 */
public record MoneySide(
        String currency,
        OptionalDouble ofProduct,
        Optional<Summary> ofDisplaced,
        Optional<Summary> imported,
        List<String> withoutPrice,
        List<String> withoutImports,
        Optional<PerTonne> perTonne,
        Optional<Message> whyNotPerTonne) {
    public MoneySide {
        withoutPrice = List.copyOf(withoutPrice);
        withoutImports = List.copyOf(withoutImports);
    }

    /**
     * The cost over the high end, the middle and the low end of what is avoided.
     *
     * @param bound whether that is a bound: at least, where what is avoided is at most
     */
    public record PerTonne(double low, double median, double high, Bound bound) {
        /** {@code at least 200 (150 to 300)}. */
        public Message message() {
            return bound.message(
                    Message.of("interval", "median", figure(median), "low", figure(low), "high", figure(high)));
        }

        /** The same in English. */
        public String text() {
            return message().english();
        }

        private static Figure figure(double value) {
            return new Figure(Print.footprint(value));
        }
    }

    static MoneySide of(
            Prices prices,
            Programme programme,
            Displaced displaced,
            Optional<Summary> avoided,
            Bound bound,
            double coverage) {
        Optional<PerTonne> perTonne = prices.cost().isPresent()
                ? avoided.filter(summary -> summary.low() > 0)
                        .filter(summary -> bound != Bound.NONE)
                        .map(summary -> perTonne(prices.cost().getAsDouble(), summary, bound))
                : Optional.empty();
        Optional<Message> why = prices.cost().isPresent() && perTonne.isEmpty()
                ? Optional.of(Message.of(
                        avoided.isEmpty() ? "programme.no-cost.no-figure" : "programme.no-cost.not-above-zero"))
                : Optional.empty();
        return new MoneySide(
                prices.currency(),
                prices.product().isPresent()
                        ? OptionalDouble.of(prices.product().getAsDouble() * programme.kilograms())
                        : OptionalDouble.empty(),
                sum(displaced, MoneySide::price, coverage),
                sum(displaced, MoneySide::importedPrice, coverage),
                without(displaced, MoneySide::price),
                without(displaced, MoneySide::importedPrice),
                perTonne,
                why);
    }

    private static PerTonne perTonne(double cost, Summary avoided, Bound bound) {
        return new PerTonne(cost / avoided.high(), cost / avoided.median(), cost / avoided.low(), bound.reversed());
    }

    /** The price of a kilogram; not a number when it was not given. */
    private static double price(Baseline.BaselinePart part) {
        return part.price().orElse(Double.NaN);
    }

    private static double importedPrice(Baseline.BaselinePart part) {
        return price(part) * part.imported().orElse(Double.NaN);
    }

    private static boolean counts(Displaced.DisplacedPart part, ToDoubleFunction<Baseline.BaselinePart> price) {
        return part.draws().isPresent() && !Double.isNaN(price.applyAsDouble(part.of()));
    }

    private static List<String> without(Displaced displaced, ToDoubleFunction<Baseline.BaselinePart> price) {
        return displaced.parts().stream()
                .filter(part -> !counts(part, price))
                .map(part -> part.of().side().words())
                .toList();
    }

    private static Optional<Summary> sum(
            Displaced displaced, ToDoubleFunction<Baseline.BaselinePart> price, double coverage) {
        List<Displaced.DisplacedPart> counted = new ArrayList<>(displaced.parts());
        counted.removeIf(part -> !counts(part, price));
        if (counted.isEmpty()) {
            return Optional.empty();
        }
        double[] sum = new double[counted.get(0).draws().orElseThrow().length];
        for (Displaced.DisplacedPart part : counted) {
            double each = price.applyAsDouble(part.of());
            double[] kilograms = part.draws().orElseThrow();
            for (int i = 0; i < sum.length; i++) {
                sum[i] += each * kilograms[i];
            }
        }
        return Optional.of(Summary.of(sum, coverage));
    }
}
