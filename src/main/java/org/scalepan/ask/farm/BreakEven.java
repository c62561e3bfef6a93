package org.scalepan.ask.farm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.production.Gap;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.uncertainty.Crossing;
import org.scalepan.uncertainty.Quantiles;

/**
 * Which value of one entry of a farm's records makes its footprint equal to another. The entry is changed in the records and the
 * whole inventory computed again, so that {@code POST /v1/footprint} with that value gives two equal medians.
 *
 * <p>The value is where the median of the farm's draws meets that of the reference. The range is that of the values which make the
 * two equal draw by draw: because a footprint only rises or only falls with an entry, the value not exceeded in a share p of the draws
 * is where the p-quantile of the difference crosses zero, whatever the form of the curve.
 */
public record BreakEven(
        BreakEvenQuestion question, SystemEstimate system, Estimate reference, BreakEvenOutcome outcome) {
    /** Medians farther apart than this, over their size, are not equal: the curve jumps over the reference there. */
    private static final double EQUAL = 1e-7;

    /**
     * What is asked.
     *
     * @param credit whether the credit for replaced fertiliser is taken off
     * @param input an entry of the notebook
     */
    public record BreakEvenQuestion(
            EditableRecords notebook,
            boolean credit,
            Side against,
            RecordInput input,
            ComparisonBasis basis,
            Sampling sampling) {}

    /** A value, or why there is none. */
    public sealed interface BreakEvenOutcome {}

    /**
     * There is a value.
     *
     * @param footprint the farm's median with it
     * @param reference the reference's median
     * @param range of the values over the draws
     * @param bound whether the value is a bound: a system or reference that is one makes it so, by the sign of the slope
     * @param rising whether the farm's footprint rises with the entry: then smaller values have less than the reference
     */
    public record FoundValue(
            double value, double footprint, double reference, ValueRange range, boolean rising, Bound bound)
            implements BreakEvenOutcome {}

    /**
     * Over the draws; an end is absent where so many draws have no value within the limits of the records, and all three where the
     * footprint rises in some draws and falls in others.
     *
     * @param evenOdds where the farm has less in half of the draws
     */
    public record ValueRange(OptionalDouble low, OptionalDouble evenOdds, OptionalDouble high) {
        static final ValueRange OPEN =
                new ValueRange(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** There is none. */
    public record NoBreakEven(Reason reason, Optional<SearchLimit> nearest) implements BreakEvenOutcome {}

    /** Where the two come nearest: a limit of the entry, the farm's median there and the reference's. */
    public record SearchLimit(double value, double footprint, double reference) {}

    /** Why there is no value. */
    public enum Reason {
        /** A side has no figure on this basis. */
        NO_FIGURE("no-figure"),
        /** The entry does not count for this indicator, boundary or unit. */
        NO_EFFECT("no-effect"),
        /** A side is a bound that does not decide it, or the entry's own factor is missing. */
        NOT_COUNTED("not-counted"),
        /** The records of a side contradict themselves, so that no figure of them can be changed soundly. */
        IMPOSSIBLE_BALANCE("impossible-balance"),
        ALWAYS_ABOVE("always-above"),
        ALWAYS_BELOW("always-below"),
        /** The footprint jumps over the reference, because a class of the guidelines' tables changes. */
        JUMP("jump");

        private final String id;

        Reason(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /** Answers a question. */
    public static BreakEven of(Library library, BreakEvenQuestion question) {
        CommonRandomNumbers random = question.sampling().random();
        Estimate reference = question.against().on(library, question.basis(), question.sampling(), random);
        SystemEstimate system = SystemEstimate.of(
                library,
                question.notebook().inventory(library),
                question.basis(),
                question.credit(),
                question.sampling(),
                random);
        boolean silent = reference.footprint().isEmpty() || system.footprint().isEmpty();
        if (silent || system.unlike(reference).isPresent()) {
            return new BreakEven(question, system, reference, new NoBreakEven(Reason.NO_FIGURE, Optional.empty()));
        }
        if (!system.contradictions().isEmpty() || !reference.contradictions().isEmpty()) {
            return new BreakEven(
                    question, system, reference, new NoBreakEven(Reason.IMPOSSIBLE_BALANCE, Optional.empty()));
        }
        if (isUncounted(question, system)) {
            return new BreakEven(question, system, reference, new NoBreakEven(Reason.NOT_COUNTED, Optional.empty()));
        }
        OneAtATimeCurve response =
                new OneAtATimeCurve(library, question.input(), question.basis(), question.credit(), random);
        double[] other = reference.footprint().get().draws();
        Bound bound = reference.bound().minus(system.bound());
        return new BreakEven(
                question,
                system,
                reference,
                decided(
                        outcome(
                                question,
                                response,
                                other,
                                reference.summary().orElseThrow().median()),
                        bound));
    }

    /** True when some of what the entry adds is not counted, so that the footprint rises with it more than is computed. */
    private static boolean isUncounted(BreakEvenQuestion question, SystemEstimate system) {
        String[] entry = question.input().id().split(":", 2);
        List<String> fields = new ArrayList<>(List.of(entry[0]));
        if (entry.length == 2) {
            fields.add(entry[0] + "/" + entry[1]);
            fields.add(entry[0] + "/" + question.basis().indicator().id());
        }
        return system.inventory().uncounted(system.scope()).stream()
                .map(Gap::field)
                .anyMatch(field -> entry.length == 2
                        ? fields.stream()
                                .anyMatch(of -> field.equals(of) || (of.contains("/") && field.startsWith(of + "/")))
                        : field.equals(entry[0]) || field.startsWith(entry[0] + "/"));
    }

    /**
     * An outcome between sides of which one may be a bound.
     *
     * @param bound of the reference less the system
     */
    private static BreakEvenOutcome decided(BreakEvenOutcome outcome, Bound bound) {
        if (outcome instanceof FoundValue found) {
            Bound ofValue = found.rising() ? bound : bound.reversed();
            return bound == Bound.NONE
                    ? new NoBreakEven(Reason.NOT_COUNTED, Optional.empty())
                    : new FoundValue(
                            found.value(),
                            found.footprint(),
                            found.reference(),
                            bound == Bound.EXACT ? found.range() : ValueRange.OPEN,
                            found.rising(),
                            ofValue);
        }
        Reason reason = ((NoBreakEven) outcome).reason();
        boolean undecided = (reason == Reason.ALWAYS_BELOW && !bound.supportsAtLeast())
                || (reason == Reason.ALWAYS_ABOVE && !bound.supportsAtMost());
        return undecided ? new NoBreakEven(Reason.NOT_COUNTED, Optional.empty()) : outcome;
    }

    private static BreakEvenOutcome outcome(
            BreakEvenQuestion question, OneAtATimeCurve response, double[] reference, double level) {
        RecordInput input = question.input();
        OneAtATimeCurve.Direction direction = response.direction();
        if (direction == OneAtATimeCurve.Direction.NONE) {
            return new NoBreakEven(Reason.NO_EFFECT, Optional.empty());
        }
        OptionalDouble value =
                new Crossing(x -> response.median(x) - level, input.least(), input.most()).nearest(input.present());
        if (value.isEmpty()) {
            return never(input, response, level);
        }
        double there = response.median(value.getAsDouble());
        if (Math.abs(there - level) > EQUAL * Math.max(Math.abs(there), Math.abs(level))) {
            return new NoBreakEven(Reason.JUMP, Optional.of(new SearchLimit(value.getAsDouble(), there, level)));
        }
        boolean rising = direction == OneAtATimeCurve.Direction.RISING
                || (direction == OneAtATimeCurve.Direction.EITHER && response.median(input.least()) < level);
        ValueRange range = direction == OneAtATimeCurve.Direction.EITHER
                ? ValueRange.OPEN
                : range(question, response, reference, rising, value.getAsDouble());
        return new FoundValue(value.getAsDouble(), there, level, range, rising, Bound.EXACT);
    }

    private static NoBreakEven never(RecordInput input, OneAtATimeCurve response, double level) {
        double atLeast = response.median(input.least());
        double atMost = response.median(input.most());
        boolean low = Math.abs(atLeast - level) <= Math.abs(atMost - level);
        SearchLimit nearest = new SearchLimit(low ? input.least() : input.most(), low ? atLeast : atMost, level);
        return new NoBreakEven(
                nearest.footprint() > level ? Reason.ALWAYS_ABOVE : Reason.ALWAYS_BELOW, Optional.of(nearest));
    }

    private static ValueRange range(
            BreakEvenQuestion question, OneAtATimeCurve response, double[] reference, boolean rising, double near) {
        double tail = (1 - question.sampling().coverage()) / 2;
        return new ValueRange(
                at(tail, question.input(), response, reference, rising, near),
                at(0.5, question.input(), response, reference, rising, near),
                at(1 - tail, question.input(), response, reference, rising, near));
    }

    /** The value not exceeded in a share of the draws. */
    private static OptionalDouble at(
            double share,
            RecordInput input,
            OneAtATimeCurve response,
            double[] reference,
            boolean rising,
            double near) {
        // Where the footprint rises, a draw's value is below x when the draw's difference at x is above zero.
        double quantile = rising ? 1 - share : share;
        return new Crossing(
                        x -> Quantiles.of(less(response.draws(x), reference), quantile), input.least(), input.most())
                .nearest(near);
    }

    private static double[] less(double[] draws, double[] reference) {
        for (int i = 0; i < draws.length; i++) {
            draws[i] -= reference[i];
        }
        return draws;
    }

    /** How many times the present value the break-even value is; empty where there is none or the present value is zero. */
    public OptionalDouble times() {
        return outcome instanceof FoundValue found && question.input().present() > 0
                ? OptionalDouble.of(found.value() / question.input().present())
                : OptionalDouble.empty();
    }
}
