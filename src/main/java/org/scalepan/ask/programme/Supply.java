package org.scalepan.ask.programme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Side;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.UnitChain;
import org.scalepan.production.Output;
import org.scalepan.uncertainty.SpreadReading;
import org.scalepan.words.Message;

/** How much of an {@link EqualBasis} a kilogram of something holds. */
sealed interface Supply {
    /** What digestible lysine is made of, each a fraction: kg lysine per kg product, and how much of that is digested. */
    List<String> DIGESTIBLE_LYSINE = List.of("lysine", "lysine-digestibility");

    /**
     * It is known.
     *
     * @param steps from the unit that was asked for along the functional-unit chain
     * @param contents what must be multiplied at its end
     */
    record Known(List<ChainStep> steps, List<CompositionRow> contents, double assumedSpread) implements Supply {
        public Known {
            steps = List.copyOf(steps);
            contents = List.copyOf(contents);
        }

        /** Draw by draw, units of the basis in one kilogram. */
        double[] perKilogram(CommonRandomNumbers random) {
            double[] impact = new double[random.size()];
            Arrays.fill(impact, 1);
            // The chain carries impacts: what holds half as much has twice the impact.
            steps.forEach(step -> step.apply(impact, random));
            double[] held = new double[impact.length];
            for (int i = 0; i < held.length; i++) {
                held[i] = 1 / impact[i];
            }
            for (CompositionRow row : contents) {
                double[] content = random.values(row.id(), SpreadReading.readFraction(row.printed(), assumedSpread));
                for (int i = 0; i < held.length; i++) {
                    held[i] *= content[i];
                }
            }
            return held;
        }
    }

    /** It is not known, because a factor is missing; nothing is borrowed from another product. */
    record MissingSupply(Message why) implements Supply {
        /** Why, in English. */
        String text() {
            return why.english();
        }
    }

    /** What a kilogram of one side holds, by the composition rows eligible on the basis. */
    static Supply of(Library library, Side side, FunctionalUnit from, EqualBasis equalBasis, ComparisonBasis basis) {
        ChainPath path = chain(library, side, basis).path(from, equalBasis.counted());
        if (path instanceof ChainPath.MissingConversion missing) {
            return new MissingSupply(missing.message());
        }
        List<CompositionRow> contents = new ArrayList<>();
        List<Message> lacking = new ArrayList<>();
        if (equalBasis == EqualBasis.DIGESTIBLE_LYSINE) {
            DIGESTIBLE_LYSINE.forEach(quantity -> content(library, side, quantity, basis)
                    .ifPresentOrElse(contents::add, () -> lacking.add(Message.verbatim(quantity + " per kg-product"))));
        }
        if (!lacking.isEmpty()) {
            return new MissingSupply(Message.of(
                    "missing.content",
                    "what",
                    lacking.stream()
                            .reduce((one, other) -> Message.of("missing.both", "one", one, "other", other))
                            .orElseThrow(),
                    "product",
                    side.product().label(),
                    "form",
                    form(side)));
        }
        return new Known(
                ((ChainPath.FoundPath) path).steps(),
                contents,
                library.spreadDefaults().composition());
    }

    private static Optional<CompositionRow> content(
            Library library, Side side, String quantity, ComparisonBasis basis) {
        return library.composition().stream()
                .filter(row -> row.product().equals(side.product().id())
                        && row.form().equals(form(side))
                        && row.quantity().equals(quantity)
                        && row.per().equals(FunctionalUnit.KG_PRODUCT.id())
                        && row.use() == CompositionRow.RowUse.DEFAULT
                        && row.cited().check().isAtLeast(basis.lowestGrade()))
                .findFirst();
    }

    private static UnitChain chain(Library library, Side side, ComparisonBasis basis) {
        if (side instanceof Side.Recorded recorded) {
            return recorded.system().output().chain(library, basis.protein(), basis.qualityCapped());
        }
        return UnitChain.of(
                library, side.product(), form(side), "", basis.protein(), basis.qualityCapped(), basis.lowestGrade());
    }

    private static String form(Side side) {
        if (side instanceof Side.Recorded recorded) {
            Output output = recorded.system().output();
            return output.form();
        }
        return ((Side.PublishedSide) side).item().form();
    }
}
