package org.scalepan.production.fish;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.Background;
import org.scalepan.production.Factor;
import org.scalepan.production.RowSpan;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.uncertainty.LogUniform;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/**
 * Gases of water with fish as measured. Measurements differ twentyfold and nobody knows which is like a given farm, so that a factor is
 * anything between the least and the most.
 */
final class PondFactors {
    private static final String TABLE = "pond_factors";

    private final Optional<MeasuredGas> methane;
    private final Optional<MeasuredGas> nitrousOxide;

    /**
     * A gas between the least and the most measured.
     *
     * @param factor kg per unit
     * @param message the range in words
     * @param rows ids of the rows that span it
     */
    record MeasuredGas(Factor factor, Message message, List<String> rows) {
        String[] rowIds() {
            return rows.toArray(String[]::new);
        }
    }

    private PondFactors(Library library) {
        this.methane = measured(library, "freshwater-pond", "ch4", 1, "gap.pond-methane");
        this.nitrousOxide = measured(library, "farmed-fish", "n2o-n", 1000, "gap.fish-nitrous-oxide");
    }

    static PondFactors of(Library library) {
        return library.view(PondFactors.class, PondFactors::new);
    }

    /** kg CH4 of a freshwater pond per hectare and year. */
    Optional<MeasuredGas> methane() {
        return methane;
    }

    /** kg N given off as N2O per kg of fish harvested live. */
    Optional<MeasuredGas> nitrousOxide() {
        return nitrousOxide;
    }

    private static Optional<MeasuredGas> measured(
            Library library, String subject, String quantity, double scale, String key) {
        List<BackgroundFactor> rows = Background.of(library).rows(TABLE, subject, quantity).stream()
                .filter(BackgroundFactor::isDefault)
                .toList();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        RowSpan span = RowSpan.of(rows);
        return Optional.of(new MeasuredGas(
                new Factor(
                        "default." + subject + "." + quantity,
                        new LogUniform(span.low(), span.high()),
                        Optional.empty()),
                Message.of(
                        key,
                        "least",
                        new Figure(SignificantFigures.text(scale * span.low(), 3)),
                        "most",
                        new Figure(SignificantFigures.text(scale * span.high(), 3))),
                span.rows()));
    }
}
