package org.scalepan.ask;

import java.util.Optional;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.Footprint;
import org.scalepan.footprint.FootprintRatio;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Summary;

/**
 * One product against the reference.
 *
 * @param timesLess reference ÷ product: how many times less the product causes
 * @param share product ÷ reference: what part of the reference's footprint it has
 * @param ofMeans mean of the reference ÷ mean of the product: what studies print that divide one mean by another
 * @param less the probability that the product causes less; none when the ratio is a bound
 * @param bound whether {@code timesLess} is the ratio or a bound of it; that of {@code share} is the reverse
 */
public record Ratio(Summary timesLess, Summary share, double ofMeans, Optional<Probability> less, Bound bound) {

    /**
     * The ratios of two estimates of one question; none when a side has no figure or one that is not above zero throughout, or when
     * the two bound nothing together or count different things.
     */
    public static Optional<Ratio> between(Estimate product, Estimate reference, double coverage) {
        boolean alike = product.isComparable()
                && reference.isComparable()
                && product.unlike(reference).isEmpty();
        return alike && bound(product, reference) != Bound.NONE
                ? Optional.of(of(product, reference, coverage))
                : Optional.empty();
    }

    /** Whether the ratio of reference to product is a bound. */
    public static Bound bound(Estimate product, Estimate reference) {
        return reference.bound().over(product.bound());
    }

    private static Ratio of(Estimate product, Estimate reference, double coverage) {
        Footprint ours = product.footprint().orElseThrow();
        Footprint theirs = reference.footprint().orElseThrow();
        FootprintRatio over = theirs.over(ours);
        Summary.OfRatio ratio = over.bothWays(coverage);
        return new Ratio(
                ratio.forth(),
                ratio.back(),
                reference.summary().orElseThrow().mean()
                        / product.summary().orElseThrow().mean(),
                bound(product, reference) == Bound.EXACT ? Optional.of(over.more()) : Optional.empty(),
                bound(product, reference));
    }
}
