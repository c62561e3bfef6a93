package org.scalepan.ask.programme;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Side;
import org.scalepan.ask.Warning;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;
import org.scalepan.production.Output;
import org.scalepan.quantity.Print;
import org.scalepan.words.Figure;

/**
 * A programme that takes more of a product in a year than the farm it is computed from gives.
 *
 * @param farm what the records call it
 * @param wanted what the programme takes, in the unit of the records
 * @param given what the farm gives by its records, less than {@code wanted}
 * @param unit what both are counted in
 */
public record Shortfall(String farm, double wanted, double given, FunctionalUnit unit) {
    /** Numbers of records and of programmes are rounded; less than this is no shortfall that anybody could tell; common practice, no source. */
    private static final double ROUNDING = 0.01;

    /** None where the product is published, where the farm gives enough, and where no factor leads from one unit to the other. */
    static Optional<Shortfall> of(Library library, SubstitutionQuestion question) {
        if (!(question.product() instanceof Side.Recorded recorded)) {
            return Optional.empty();
        }
        Output output = recorded.system().output();
        return perUnit(library, output, question.programme().unit())
                .map(each -> new Shortfall(
                        recorded.words(), question.programme().kilograms() * each, output.amount(), output.per()))
                .filter(found -> found.wanted() > found.given() * (1 + ROUNDING));
    }

    /** How much of a farm's output one unit of the programme takes, centrally. */
    private static Optional<Double> perUnit(Library library, Output output, FunctionalUnit unit) {
        UnitChain chain = output.chain(library, ProteinBasis.CRUDE, true);
        return chain.path(output.per(), unit) instanceof ChainPath.FoundPath found
                ? Optional.of(found.steps().stream()
                        .mapToDouble(ChainStep::multiplier)
                        .reduce(1, (one, other) -> one * other))
                : Optional.empty();
    }

    /** In a sentence. */
    public String sentence() {
        return warning().text();
    }

    Warning warning() {
        return Warning.of(
                "larger-than-farm",
                List.of(farm),
                "wanted",
                new Figure(Print.footprint(wanted)),
                "unit",
                unit.message(),
                "farm",
                farm,
                "given",
                new Figure(Print.footprint(given)));
    }
}
