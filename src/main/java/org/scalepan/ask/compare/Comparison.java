package org.scalepan.ask.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Citations;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.literature.PairedEvidence;

/**
 * Products compared with a reference on one basis. All footprints are drawn with common random numbers: a factor on both sides is drawn
 * once.
 *
 * @param underOtherLandUse the same with land-use change the other way round; empty for what has none, and in that comparison itself
 */
public record Comparison(
        ComparisonQuestion question,
        Estimate reference,
        List<ComparedProduct> items,
        Optional<Comparison> underOtherLandUse) {
    public Comparison {
        items = List.copyOf(items);
    }

    /** What is asked, all defaults resolved. */
    public record ComparisonQuestion(
            List<ProductForm> products, ProductForm against, ComparisonBasis basis, Sampling sampling) {
        public ComparisonQuestion {
            products = List.copyOf(products);
        }
    }

    /**
     * One compared product.
     *
     * @param versus the ratios, when both sides have evidence; none of the reference to itself
     * @param paired ratios from studies that assessed both, which may exist where a pooled ratio does not
     */
    public record ComparedProduct(Estimate estimate, Optional<Ratio> versus, PairedEvidence paired) {}

    /** Answers a question from the library. */
    public static Comparison of(Library library, ComparisonQuestion question) {
        CommonRandomNumbers random = question.sampling().random();
        Comparison asked = alone(library, question, random);
        Optional<Comparison> other = question.basis()
                .withOtherLandUse()
                .map(basis -> alone(
                        library,
                        new ComparisonQuestion(question.products(), question.against(), basis, question.sampling()),
                        random));
        return new Comparison(question, asked.reference, asked.items, other);
    }

    /** The ratio of a product with land-use change the other way round. */
    public Optional<Ratio> versusUnderOtherLandUse(ComparedProduct item) {
        return underOtherLandUse.flatMap(
                other -> other.items.get(items.indexOf(item)).versus());
    }

    private static Comparison alone(Library library, ComparisonQuestion question, CommonRandomNumbers random) {
        ComparisonBasis basis = question.basis();
        Estimate reference = Estimating.asked(library, question.against(), basis, question.sampling(), random);
        List<ComparedProduct> items = new ArrayList<>();
        for (ProductForm product : question.products()) {
            if (product.equals(question.against())) {
                items.add(new ComparedProduct(reference, Optional.empty(), PairedEvidence.NONE));
                continue;
            }
            Estimate estimate = Estimating.asked(library, product, basis, question.sampling(), random);
            PairedEvidence paired = paired(library, estimate, reference);
            items.add(new ComparedProduct(
                    estimate,
                    Ratio.between(estimate, reference, question.sampling().coverage()),
                    paired));
        }
        return new Comparison(question, reference, items, Optional.empty());
    }

    private static PairedEvidence paired(Library library, Estimate product, Estimate reference) {
        return product instanceof PublishedEstimate ours && reference instanceof PublishedEstimate theirs
                ? PairedEvidence.between(library, ours.evidence(), theirs.evidence())
                : PairedEvidence.NONE;
    }

    /** The figure of a product by the other kind of evidence than is asked for. */
    public Estimate ofOtherKind(Library library, Estimate estimate) {
        ProductForm item =
                estimate instanceof ModelledEstimate modelled ? modelled.item() : ((PublishedEstimate) estimate).item();
        return Estimating.asked(library, item, question.basis().withOtherEvidence(), question.sampling());
    }

    /** Every estimate of this comparison once: the reference first. */
    public List<Estimate> estimates() {
        return Stream.concat(Stream.of(reference), items.stream().map(ComparedProduct::estimate))
                .distinct()
                .toList();
    }

    /** The provenance of the figures of all sides. */
    public Provenance grounds(Library library) {
        return new Provenance(library, List.copyOf(estimates()));
    }

    /** Every publication behind a figure, a paired ratio or the warming set, in order of first use. */
    public List<Reference> references(Library library) {
        Citations citations = new Citations();
        for (Estimate estimate : estimates()) {
            if (estimate instanceof PublishedEstimate published) {
                citations.add(published);
            }
        }
        if (question.basis().evidence() == EvidenceKind.MODELLED) {
            grounds(library).references().forEach(reference -> citations.addSource(reference.id()));
        }
        items.forEach(item -> citations.add(item.paired()));
        if (question.basis().indicator().isWarming()) {
            citations.add(question.basis().gwp());
        }
        return citations.references(library);
    }
}
