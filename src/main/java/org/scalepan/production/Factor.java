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
    /** A factor that is a row of the library and drawn under its id. */
    public Factor(String id, Distribution reading) {
        this(id, reading, Optional.of(id));
    }

    /** The central value. */
    public double central() {
        return reading.median();
    }

    /** How wide it is on the logarithm. */
    public double lnSd() {
        return reading.lnSd();
    }
}
