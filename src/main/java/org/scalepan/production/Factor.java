package org.scalepan.production;

import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.uncertainty.Distribution;

/**
 * A factor with its uncertainty.
 *
 * @param id the id under which it is drawn, mostly a row of the library, so that two systems that use the row share its draws
 * @param reading its distribution; above zero for a factor of the library
 * @param row the row of the library it comes from, when it comes from one
 * @param central the central value
 * @param lnSd its standard deviation on the logarithmic scale, or relative to the central value
 */
public record Factor(String id, Distribution reading, Optional<String> row, double central, double lnSd)
        implements TermFactor {
    /** Central value and width are worked out here, once, because some distributions have no closed form of them. */
    public Factor(String id, Distribution reading, Optional<String> row) {
        this(id, reading, row, reading.median(), reading.lnSd());
    }

    /** A factor that is a row of the library and drawn under its id. */
    public Factor(String id, Distribution reading) {
        this(id, reading, Optional.of(id));
    }

    @Override
    public double[] drawn(CommonRandomNumbers random) {
        return random.values(id, reading);
    }

    @Override
    public boolean isRecorded() {
        return RecordedNumber.isKey(id);
    }

    @Override
    public Stream<Factor> behind() {
        return Stream.of(this);
    }

    @Override
    public double centralWith(Factor moved, double value) {
        return id.equals(moved.id) ? value : central;
    }
}
