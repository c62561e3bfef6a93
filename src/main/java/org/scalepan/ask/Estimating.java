package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Pool;
import org.scalepan.literature.Unused;
import org.scalepan.words.Message;

/** Estimates products from the literature. */
public final class Estimating {
    private Estimating() {}

    /** The estimate for one product by the kind of evidence that the basis asks for. */
    public static Estimate asked(
            Library library, ProductForm item, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
        return basis.evidence() == EvidenceKind.MODELLED
                ? ModelledEstimate.of(library, item, basis, sampling, random)
                : estimate(library, item, basis, sampling, random);
    }

    /** The same, drawn for itself alone. */
    public static Estimate asked(Library library, ProductForm item, ComparisonBasis basis, Sampling sampling) {
        return asked(library, item, basis, sampling, sampling.random());
    }

    /** The estimate for one product on a basis, from publications. */
    public static PublishedEstimate estimate(
            Library library, ProductForm item, ComparisonBasis basis, Sampling sampling) {
        return estimate(library, item, basis, sampling, sampling.random());
    }

    /** The estimate for one product of a question, cached by basis and sampling. */
    public static PublishedEstimate estimate(
            Library library, ProductForm item, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
        return EstimateCache.of(library)
                .get(
                        new EstimateCache.EstimateKey(item, basis, sampling),
                        () -> fresh(library, item, basis, sampling, random));
    }

    private static PublishedEstimate fresh(
            Library library, ProductForm item, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
        Evidence evidence = Pool.of(library, basis.question(item));
        if (evidence instanceof Evidence.PooledEvidence some) {
            Optional<PublishedEstimate> same = underOtherLandUse(library, item, basis, sampling)
                    .filter(other ->
                            other.evidence() instanceof Evidence.PooledEvidence pooled && pooled.drawsAs(some));
            if (same.isPresent()) {
                return new PublishedEstimate(
                        item, evidence, same.get().footprint(), same.get().summary(), List.of(), List.of());
            }
            Footprint footprint = some.footprint(random);
            return new PublishedEstimate(
                    item,
                    evidence,
                    Optional.of(footprint),
                    Optional.of(footprint.summary(sampling.coverage())),
                    List.of(),
                    List.of());
        }
        return new PublishedEstimate(
                item,
                evidence,
                Optional.empty(),
                Optional.empty(),
                elsewhere(library, item.product(), evidence),
                composition(library, item, basis.lowestGrade()));
    }

    /** Most evidence is the same with and without land-use change, and is not drawn again. */
    private static Optional<PublishedEstimate> underOtherLandUse(
            Library library, ProductForm item, ComparisonBasis basis, Sampling sampling) {
        return basis.withOtherLandUse()
                .flatMap(
                        other -> EstimateCache.of(library).known(new EstimateCache.EstimateKey(item, other, sampling)));
    }

    private static List<CompositionRow> composition(Library library, ProductForm item, Grade lowest) {
        return library.composition().stream()
                .filter(row -> row.product().equals(item.product().id())
                        && row.form().equals(item.form())
                        && row.cited().check().isAtLeast(lowest)
                        && row.use() == CompositionRow.RowUse.DEFAULT)
                .toList();
    }

    /** All that is published of the product and was seen as well as is asked: first for the indicator asked, then for others. */
    private static List<Unused> elsewhere(Library library, Product product, Evidence evidence) {
        Set<String> products =
                library.withNarrower(product).stream().map(Product::id).collect(Collectors.toUnmodifiableSet());
        Stream<Unused> others = library.results().stream()
                .filter(result -> products.contains(result.product())
                        && !result.indicator()
                                .equals(evidence.question().indicator().id()))
                .map(result ->
                        new Unused(result, Message.of("unused.other-indicator", "indicator", result.indicator())));
        return Stream.concat(evidence.unused().stream(), others)
                .filter(unused -> unused.result()
                        .cited()
                        .check()
                        .isAtLeast(evidence.question().lowestGrade()))
                .toList();
    }
}
