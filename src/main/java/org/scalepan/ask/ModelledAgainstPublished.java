package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Regions;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.LandUseChange;
import org.scalepan.production.Scope;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.uncertainty.Summary;

/**
 * Every reference farm beside the published results of its product: the test of whether what is computed and what studies print measure
 * alike. Where the two disagree there is a reason to be found (boundary, land-use change, manure, feed factors), not an input to be
 * tuned.
 *
 * @param pairs each farm under each indicator of which its product has studies
 */
public record ModelledAgainstPublished(List<ComparedFarm> pairs) {
    /** The indicators that reference farms are made for. */
    private static final List<String> INDICATORS = List.of("ghg", "land", "feed");

    public ModelledAgainstPublished {
        pairs = List.copyOf(pairs);
    }

    /** What a pair says. */
    public enum Agreement {
        /** The median of the studies lies in the interval of the model. */
        WITHIN,
        /** The model is lower than that. */
        MODEL_LOWER,
        /** The model is higher. */
        MODEL_HIGHER,
        /** The model is a lower bound and lies below the studies: nothing is decided. */
        UNDECIDED;

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * A farm beside the studies of its product.
     *
     * @param ratio median of the model ÷ median of the studies
     * @param modelWithinStudies whether the median of the model lies in the interval of the next study
     */
    public record ComparedFarm(
            ModelledFarm farm,
            ComparisonBasis basis,
            ModelledEstimate modelled,
            PublishedEstimate published,
            double ratio,
            boolean modelWithinStudies,
            Agreement agreement) {}

    /** The table of a library, computed once. */
    public static ModelledAgainstPublished of(Library library) {
        return library.view(ModelledAgainstPublished.class, ModelledAgainstPublished::computed);
    }

    private static ModelledAgainstPublished computed(Library library) {
        List<ComparedFarm> pairs = new ArrayList<>();
        Sampling sampling = new Sampling(Sampling.DEFAULT_COVERAGE, Sampling.DEFAULT_DRAWS, Sampling.DEFAULT_SEED);
        for (ModelledFarm farm : ModelledFarms.of(library).all()) {
            for (Indicator indicator : indicators(library)) {
                ComparisonBasis basis = basis(library, indicator, farm);
                ProductForm item = new ProductForm(
                        farm.inventory().output().product(),
                        farm.inventory().output().product().defaultForm());
                PublishedEstimate published =
                        Estimating.estimate(library, item, basis.withEvidence(EvidenceKind.PUBLISHED), sampling);
                ModelledEstimate modelled = ModelledEstimate.of(library, item, basis, sampling, sampling.random());
                // A publication that nobody can look up tests nothing.
                if (published.summary().isPresent() && modelled.summary().isPresent() && !published.isUnciteable()) {
                    pairs.add(compared(farm, basis, modelled, published));
                }
            }
        }
        return new ModelledAgainstPublished(pairs);
    }

    private static List<Indicator> indicators(Library library) {
        return INDICATORS.stream()
                .flatMap(id ->
                        Optional.<Indicator>ofNullable(library.indicators().get(id)).stream())
                .toList();
    }

    private static ComparedFarm compared(
            ModelledFarm farm, ComparisonBasis basis, ModelledEstimate modelled, PublishedEstimate published) {
        Summary model = modelled.summary().orElseThrow();
        Summary studies = published.summary().orElseThrow();
        return new ComparedFarm(
                farm,
                basis,
                modelled,
                published,
                model.median() / studies.median(),
                studies.low() <= model.median() && model.median() <= studies.high(),
                agreement(model, studies.median(), modelled.bound()));
    }

    private static Agreement agreement(Summary model, double studies, Bound bound) {
        if (model.low() > studies) {
            return Agreement.MODEL_HIGHER;
        }
        if (bound != Bound.EXACT) {
            return Agreement.UNDECIDED;
        }
        return model.high() < studies ? Agreement.MODEL_LOWER : Agreement.WITHIN;
    }

    /** The usual question about the farm's product. */
    private static ComparisonBasis basis(Library library, Indicator indicator, ModelledFarm farm) {
        return new ComparisonBasis(
                indicator,
                FunctionalUnit.of(indicator.defaultPer()).orElse(FunctionalUnit.KG_PROTEIN),
                Scope.boundaryOfRecords(indicator.defaultBoundary()),
                LandUseChange.EXCLUDE,
                library.defaultWarmingSet(),
                farm.farm().region().orElse(Regions.WORLD),
                Grade.USUAL,
                Set.of(),
                Set.of(),
                ProteinBasis.CRUDE,
                true,
                false,
                IntervalOf.STUDY,
                EvidenceKind.MODELLED,
                Optional.of(farm.farm().id()));
    }

    /** Pairs whose model counts all that is required. */
    public List<ComparedFarm> exact() {
        return pairs.stream()
                .filter(pair -> pair.modelled().bound() == Bound.EXACT)
                .toList();
    }
}
