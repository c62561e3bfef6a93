package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import org.scalepan.footprint.Footprint;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Unused;
import org.scalepan.uncertainty.Summary;

/**
 * What can be said of one product on a ruler.
 *
 * @param evidence the results behind it, or why there are none
 * @param elsewhere when there is no evidence: what is known of the product instead
 */
public record Quote(
        ProductForm item,
        Evidence evidence,
        Optional<Footprint> footprint,
        Optional<Summary> summary,
        List<Unused> elsewhere) {
    public Quote {
        elsewhere = List.copyOf(elsewhere);
    }

    /** How many studies speak. */
    public int studies() {
        return evidence instanceof Evidence.Some some ? some.studies().size() : 0;
    }

    /** How many published numbers speak. */
    public int results() {
        return evidence instanceof Evidence.Some some ? (int) some.findings().count() : 0;
    }
}
