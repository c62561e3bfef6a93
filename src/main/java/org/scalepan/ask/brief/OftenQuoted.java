package org.scalepan.ask.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Sentences;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.literature.LandUseChange;
import org.scalepan.quantity.Print;
import org.scalepan.uncertainty.Summary;

/**
 * Why a figure of a brief may differ from one that is often quoted of the same product: mean in place of median, another end of the chain,
 * land-use change, and for beef one kind of herd. Each with the figure that this library has for it.
 */
public final class OftenQuoted {
    private final Library library;
    private final ComparisonBasis basis;
    private final Sampling sampling;

    private OftenQuoted(Brief brief) {
        this.library = brief.library();
        this.basis = brief.question().basis();
        this.sampling = brief.question().sampling();
    }

    /** A sentence for each product with a figure. */
    public static List<String> of(Brief brief) {
        OftenQuoted quoted = new OftenQuoted(brief);
        return brief.estimates().stream()
                .distinct()
                .filter(PublishedEstimate.class::isInstance)
                .map(PublishedEstimate.class::cast)
                .flatMap(estimate -> quoted.sentence(estimate).stream())
                .toList();
    }

    private Optional<String> sentence(PublishedEstimate estimate) {
        return estimate.summary().map(summary -> {
            List<String> others = new ArrayList<>();
            others.add("the mean is " + Print.footprint(summary.mean()));
            basis.withOtherLandUse()
                    .flatMap(other -> figure(estimate.item(), other))
                    .ifPresent(figure -> others.add((basis.luc() == LandUseChange.EXCLUDE
                                    ? "with land-use change counted "
                                    : "without land-use change ")
                            + figure));
            if (basis.boundary() != Boundary.RETAIL) {
                figure(estimate.item(), basis.withBoundary(Boundary.RETAIL))
                        .ifPresent(figure -> others.add("up to retail, by other studies, " + figure));
                basis.withBoundary(Boundary.RETAIL)
                        .withOtherLandUse()
                        .flatMap(other -> figure(estimate.item(), other))
                        .ifPresent(figure -> others.add("up to retail with land-use change " + figure));
            }
            for (Product narrower : library.withNarrower(estimate.product())) {
                if (!narrower.equals(estimate.product())) {
                    figure(new ProductForm(narrower, narrower.defaultForm()), basis)
                            .ifPresent(figure -> others.add(narrower.name() + " alone " + figure));
                }
            }
            return estimate.words() + ": the median here is " + Sentences.interval(summary) + "; "
                    + String.join("; ", others) + ".";
        });
    }

    private Optional<String> figure(ProductForm item, ComparisonBasis other) {
        Estimate estimate = Estimating.asked(library, item, other, sampling);
        Optional<Summary> summary = estimate.summary();
        return summary.map(found -> estimate.bound().words() + Sentences.interval(found));
    }
}
