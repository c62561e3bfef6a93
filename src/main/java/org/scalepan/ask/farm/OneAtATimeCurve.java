package org.scalepan.ask.farm;

import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.uncertainty.Quantiles;

/** How a farm's footprint answers to one entry of its records: all draws of the footprint at any value of the entry. */
final class OneAtATimeCurve {
    private final Library library;
    private final RecordInput entry;
    private final ComparisonBasis basis;
    private final boolean credit;
    private final CommonRandomNumbers random;

    OneAtATimeCurve(
            Library library, RecordInput entry, ComparisonBasis basis, boolean credit, CommonRandomNumbers random) {
        this.library = library;
        this.entry = entry;
        this.basis = basis;
        this.credit = credit;
        this.random = random;
    }

    /** The draws when the entry has a value; zeros when nothing that counts is left. */
    double[] draws(double value) {
        return SystemEstimate.undrawn(library, entry.at().apply(value).inventory(library), basis, credit)
                .drawn(random)
                .map(footprint -> footprint.draws())
                .orElseGet(() -> new double[random.size()]);
    }

    double median(double value) {
        return Quantiles.of(draws(value), 0.5);
    }

    /** Which way the footprint goes when the entry rises. */
    enum Direction {
        RISING,
        FALLING,
        /** Up in some draws and down in others. */
        EITHER,
        NONE
    }

    Direction direction() {
        double[] here = draws(entry.present());
        boolean rises = false;
        boolean falls = false;
        double step = entry.present() > 0 ? entry.present() : (entry.most() - entry.least()) / 4;
        for (double other : new double[] {entry.least(), entry.within(entry.present() + step)}) {
            double[] there = draws(other);
            for (int i = 0; i < here.length; i++) {
                double change = (there[i] - here[i]) * Math.signum(other - entry.present());
                // Sums in another order differ in their last digits.
                boolean differs = Math.abs(change) > 1e-12 * Math.max(Math.abs(here[i]), Math.abs(there[i]));
                rises |= differs && change > 0;
                falls |= differs && change < 0;
            }
        }
        if (rises && falls) {
            return Direction.EITHER;
        }
        return rises ? Direction.RISING : falls ? Direction.FALLING : Direction.NONE;
    }
}
