package org.scalepan.ask;

import java.util.List;
import java.util.Set;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.LandUseChange;

/** The question of the benchmarks: every product of the library with evidence on one comparison basis, 21 today, beside beef. */
public final class AllProducts {
    public static final Library LIBRARY = ((LibraryLoad.Loaded) LibraryLoader.bundled()).library();

    private AllProducts() {}

    /** Greenhouse gases per kg protein at the farm gate, without land-use change. */
    static ComparisonBasis basis() {
        return new ComparisonBasis(
                LIBRARY.indicators().get("ghg"),
                FunctionalUnit.KG_PROTEIN,
                Boundary.FARM_GATE,
                LandUseChange.EXCLUDE,
                LIBRARY.defaultWarmingSet(),
                "world",
                Grade.MEMORY,
                Set.of(),
                Set.of(),
                ProteinBasis.CRUDE,
                true,
                false,
                IntervalOf.STUDY,
                org.scalepan.ask.EvidenceKind.PUBLISHED,
                java.util.Optional.empty());
    }

    private static final List<ProductForm> SPEAKING = LIBRARY.products().values().stream()
            .flatMap(product -> LIBRARY.ids("forms").stream().map(form -> new ProductForm(product, form)))
            .filter(item -> Estimating.estimate(LIBRARY, item, basis(), new Sampling(0.9, 1000, 1)).evidence()
                    instanceof Evidence.PooledEvidence)
            .toList();

    /**
     * @param products how many of them; 0 for all
     */
    public static Comparison.ComparisonQuestion question(int products, int draws, long seed) {
        ProductForm beef = new ProductForm(LIBRARY.products().get("beef"), "fresh");
        return new Comparison.ComparisonQuestion(
                products == 0 ? SPEAKING : SPEAKING.subList(0, products), beef, basis(), new Sampling(0.9, draws, seed));
    }
}
