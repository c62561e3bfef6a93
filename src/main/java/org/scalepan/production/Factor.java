package org.scalepan.production;

import java.util.Optional;
import org.scalepan.uncertainty.Distribution;

/**
 * A factor with its doubt.
 *
 * @param id the id under which it is drawn, mostly a row of the library, so that two systems that use the row share its draws
 * @param reading its distribution, above zero
 * @param row the row of the library it comes from, when it comes from one
 */
public record Factor(String id, Distribution reading, Optional<String> row) {
    private static final double ONE_SD_BELOW = 0.15865525393145707;

    /** A factor that is a row of the library and drawn under its id. */
    public Factor(String id, Distribution reading) {
        this(id, reading, Optional.of(id));
    }

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
