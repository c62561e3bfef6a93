package org.scalepan.ask.farm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.production.Inventory;
import org.scalepan.production.practice.ModelledFarm;

/**
 * A farm or herd computed from its records, beside other systems and published products, for one or more indicators. All are
 * drawn from one book, so that a factor that serves several of them, such as the grid's intensity, is drawn once.
 */
public record SystemAnswer(SystemQuestion question, List<IndicatorAnswer> bases) {
    public SystemAnswer {
        bases = List.copyOf(bases);
    }

    /**
     * What is asked.
     *
     * @param system the farm or herd the question is about
     * @param others further systems to stand beside it
     * @param farms reference farms to stand beside it
     * @param products published products to stand beside it
     * @param bases one for each indicator
     * @param credit whether the credit for replaced fertiliser is taken off
     */
    public record SystemQuestion(
            Inventory system,
            List<Inventory> others,
            List<ModelledFarm> farms,
            List<ProductForm> products,
            List<ComparisonBasis> bases,
            boolean credit,
            Sampling sampling) {
        public SystemQuestion {
            others = List.copyOf(others);
            farms = List.copyOf(farms);
            products = List.copyOf(products);
            bases = List.copyOf(bases);
        }
    }

    /**
     * The answer for one indicator.
     *
     * @param displacedUse the same system with the use elsewhere of burden-free by-products counted, where there are any
     * @param withCredit the same system with the credit taken off, or without it, whichever was not asked for; when there is a credit
     */
    public record IndicatorAnswer(
            ComparisonBasis basis,
            SystemEstimate system,
            Optional<DisplacedUseFigure> displacedUse,
            Optional<SystemEstimate> withCredit,
            List<OtherSystem> others,
            List<OtherProduct> products) {
        public IndicatorAnswer {
            others = List.copyOf(others);
            products = List.copyOf(products);
        }
    }

    /**
     * Another system beside the first.
     *
     * @param farm the reference farm that it is, when it is one
     * @param versus the ratio; none of a system to the same records once more
     * @param displacedUse the other system with the use elsewhere of its burden-free by-products counted
     * @param withDisplacedUse the ratio with the use elsewhere of the first system's burden-free by-products counted
     */
    public record OtherSystem(
            Optional<ModelledFarm> farm,
            SystemEstimate estimate,
            Optional<Ratio> versus,
            Optional<DisplacedUseFigure> displacedUse,
            Optional<Ratio> withDisplacedUse) {}

    /**
     * A published product beside the system.
     *
     * @param withDisplacedUse the ratio with the use elsewhere of the system's burden-free by-products counted
     * @param otherLandUse both sides with land-use change the other way round; empty for an indicator that has none
     */
    public record OtherProduct(
            PublishedEstimate estimate,
            Optional<Ratio> versus,
            Optional<Ratio> withDisplacedUse,
            Optional<LandUseState> otherLandUse) {}

    /** A published product beside the system under one state of land-use change, which holds for both sides. */
    public record LandUseState(PublishedEstimate estimate, Optional<Ratio> versus) {}

    /** Answers a question. */
    public static SystemAnswer of(Library library, SystemQuestion question) {
        List<IndicatorAnswer> bases = new ArrayList<>();
        for (ComparisonBasis basis : question.bases()) {
            bases.add(onBasis(library, question, basis));
        }
        return new SystemAnswer(question, bases);
    }

    /** A system beside the first, and the reference farm that it is, when it is one. */
    private record Neighbour(Optional<ModelledFarm> farm, Inventory inventory) {}

    private static IndicatorAnswer onBasis(Library library, SystemQuestion question, ComparisonBasis basis) {
        Sampling sampling = question.sampling();
        CommonRandomNumbers random = sampling.random();
        SystemEstimate own = SystemEstimate.of(library, question.system(), basis, question.credit(), sampling, random);
        Optional<DisplacedUseFigure> displaced = DisplacedUseFigure.drawn(library, own, basis, sampling, random);
        Function<Estimate, Optional<Ratio>> withDisplaced = other -> displaced
                .flatMap(DisplacedUseFigure::estimate)
                .flatMap(found -> Ratio.between(found, other, sampling.coverage()));
        List<OtherSystem> others = Stream.concat(
                        question.others().stream().map(inventory -> new Neighbour(Optional.empty(), inventory)),
                        question.farms().stream().map(farm -> new Neighbour(Optional.of(farm), farm.inventory())))
                .map(beside -> {
                    SystemEstimate estimate =
                            SystemEstimate.of(library, beside.inventory(), basis, question.credit(), sampling, random);
                    return new OtherSystem(
                            beside.farm(),
                            estimate,
                            estimate.inventory().equals(own.inventory())
                                    ? Optional.empty()
                                    : Ratio.between(own, estimate, sampling.coverage()),
                            DisplacedUseFigure.drawn(library, estimate, basis, sampling, random),
                            withDisplaced.apply(estimate));
                })
                .toList();
        List<Optional<LandUseState>> otherLandUse = underOtherLandUse(library, question, basis);
        List<OtherProduct> products = new ArrayList<>();
        for (ProductForm product : question.products()) {
            PublishedEstimate estimate = Estimating.estimate(library, product, basis, sampling, random);
            products.add(new OtherProduct(
                    estimate,
                    Ratio.between(own, estimate, sampling.coverage()),
                    withDisplaced.apply(estimate),
                    otherLandUse.get(products.size())));
        }
        boolean hasCredit = question.system().flows().stream()
                .anyMatch(flow -> flow.stage() == org.scalepan.production.Stage.CREDIT
                        && flow.flux().indicator().equals(basis.indicator().id()));
        Optional<SystemEstimate> otherWay = hasCredit
                ? Optional.of(
                        SystemEstimate.of(library, question.system(), basis, !question.credit(), sampling, random))
                : Optional.empty();
        return new IndicatorAnswer(basis, own, displaced, otherWay, others, products);
    }

    /** Each product beside the system with land-use change the other way round on both sides. */
    private static List<Optional<LandUseState>> underOtherLandUse(
            Library library, SystemQuestion question, ComparisonBasis basis) {
        Optional<ComparisonBasis> other = question.products().isEmpty() ? Optional.empty() : basis.withOtherLandUse();
        if (other.isEmpty()) {
            return question.products().stream()
                    .map(product -> Optional.<LandUseState>empty())
                    .toList();
        }
        Sampling sampling = question.sampling();
        CommonRandomNumbers random = sampling.random();
        SystemEstimate own =
                SystemEstimate.of(library, question.system(), other.get(), question.credit(), sampling, random);
        return question.products().stream()
                .map(product -> Estimating.estimate(library, product, other.get(), sampling, random))
                .map(estimate ->
                        Optional.of(new LandUseState(estimate, Ratio.between(own, estimate, sampling.coverage()))))
                .toList();
    }
}
