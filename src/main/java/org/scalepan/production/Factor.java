package org.scalepan.production;

import org.scalepan.uncertainty.Distribution;

/**
 * A factor with its doubt.
 *
 * @param id the id under which it is drawn: a row of the library, so that two systems that use the row share its draws
 * @param reading its distribution, above zero
 */
public record Factor(String id, Distribution reading) {
    private static final double ONE_SD_BELOW = 0.15865525393145707;

    /** The central value. */
    public double central() {
        return reading.median();
    }

    /** The standard deviation of its logarithm, by the quantiles one standard deviation about the middle. */
    public double lnSd() {
        double low = reading.quantile(ONE_SD_BELOW);
        double high = reading.quantile(1 - ONE_SD_BELOW);
        return low > 0 ? (StrictMath.log(high) - StrictMath.log(low)) / 2 : 0;
    }
}
