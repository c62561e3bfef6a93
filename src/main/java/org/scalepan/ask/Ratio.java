package org.scalepan.ask;

import java.util.Optional;
import org.scalepan.footprint.Footprint;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Summary;

/**
 * One product against the reference.
 *
 * @param timesLess reference ÷ product: how many times less the product causes
 * @param share product ÷ reference: what part of the reference's footprint it has
 * @param ofMeans mean of the reference ÷ mean of the product: what studies print that divide one mean by another
 * @param less the probability that the product causes less
 */
public record Ratio(Summary timesLess, Summary share, double ofMeans, Probability less) {

    /** The ratios of two estimates of one question; none when a side has no figure or one that is not above zero throughout. */
    public static Optional<Ratio> between(Estimate product, Estimate reference, double coverage) {
        return product.isComparable() && reference.isComparable()
                ? Optional.of(of(product, reference, coverage))
                : Optional.empty();
    }

    private static Ratio of(Estimate product, Estimate reference, double coverage) {
        Footprint ours = product.footprint().orElseThrow();
        Footprint theirs = reference.footprint().orElseThrow();
        Summary.OfRatio ratio = theirs.ratioTo(ours, coverage);
        return new Ratio(
                ratio.forth(),
                ratio.back(),
                reference.summary().orElseThrow().mean()
                        / product.summary().orElseThrow().mean(),
                ours.below(theirs));
    }
}
