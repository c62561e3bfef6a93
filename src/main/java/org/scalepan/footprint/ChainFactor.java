package org.scalepan.footprint;

import org.scalepan.factors.CompositionRow;
import org.scalepan.uncertainty.Constant;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.SpreadKind;

/**
 * A factor of the functional-unit chain: a composition row, read as a distribution.
 *
 * @param row the row it comes from
 * @param reading its distribution
 * @param scale a constant put on top of it, such as 6.25 over the nitrogen factor used in print
 * @param cap the highest value that a draw may take; infinite for no cap
 * @param central the central value after scale and cap
 * @param lnSd how wide the reading is on the logarithm
 */
public record ChainFactor(
        CompositionRow row, Distribution reading, double scale, double cap, double central, double lnSd) {
    /** Central value and width are worked out here, once, because some distributions have no closed form of them. */
    public ChainFactor(CompositionRow row, Distribution reading, double scale, double cap) {
        this(row, reading, scale, cap, Math.min(cap, reading.median() * scale), reading.lnSd());
    }

    /** True when the spread is the library's assumption and not the publication's. */
    public boolean spreadIsAssumed() {
        return (row.printed().kind() == SpreadKind.NONE || row.printed().kind() == SpreadKind.INPUT_RANGE)
                && !(reading instanceof Constant);
    }

    double[] draw(CommonRandomNumbers random) {
        double[] drawn = random.values(row.id(), reading);
        double[] out = new double[drawn.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = Math.min(cap, drawn[i] * scale);
        }
        return out;
    }
}
