package org.scalepan.literature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.Regions;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;

/**
 * Where the library has published evidence and where it is empty: every product in its usual form, by indicator and boundary, on the
 * indicator's usual functional unit, all the world, for the usual grade and default warming set, without land-use change.
 *
 * @param cells in the order of products, indicators and boundaries
 */
public record Coverage(List<CoverageCell> cells) {
    public Coverage {
        cells = List.copyOf(cells);
    }

    /**
     * What there is of one product.
     *
     * @param studies how many speak; 0 where there is none
     * @param worstGrade the lowest grade of a number or conversion used; empty where there is none
     * @param reason why there is none; empty where there is one
     */
    public record CoverageCell(
            Product product,
            Indicator indicator,
            Boundary boundary,
            int studies,
            Optional<Grade> worstGrade,
            Optional<String> reason) {
        /** True when a default question has an answer here. */
        public boolean isFilled() {
            return studies > 0;
        }
    }

    /** The coverage of a library, computed once. */
    public static Coverage of(Library library) {
        return library.view(Coverage.class, Coverage::compute);
    }

    private static Coverage compute(Library library) {
        List<CoverageCell> cells = new ArrayList<>();
        for (Product product : library.products().values()) {
            for (Indicator indicator : library.indicators().values()) {
                boundaries(indicator).forEach(boundary -> cells.add(cell(library, product, indicator, boundary)));
            }
        }
        return new Coverage(cells);
    }

    /** Feed is counted at the animal; what only a farm's own meters count is never published. */
    private static Stream<Boundary> boundaries(Indicator indicator) {
        if (indicator.isOfRecordsAlone()) {
            return Stream.empty();
        }
        return indicator.isFeed() ? Stream.of(indicator.defaultBoundary()) : Stream.of(Boundary.values());
    }

    private static CoverageCell cell(Library library, Product product, Indicator indicator, Boundary boundary) {
        Evidence evidence = Pool.of(library, question(library, product, indicator, boundary));
        if (evidence instanceof Evidence.PooledEvidence some) {
            return new CoverageCell(product, indicator, boundary, some.studies().size(), worst(some), Optional.empty());
        }
        return new CoverageCell(
                product,
                indicator,
                boundary,
                0,
                Optional.empty(),
                Optional.of(((Evidence.NoEvidence) evidence).reason()));
    }

    private static PoolQuestion question(Library library, Product product, Indicator indicator, Boundary boundary) {
        return new PoolQuestion(
                product,
                product.defaultForm(),
                indicator,
                FunctionalUnit.of(indicator.defaultPer()).orElseThrow(),
                boundary,
                LandUseChange.EXCLUDE,
                library.defaultWarmingSet(),
                Regions.WORLD,
                Set.of(),
                Set.of(),
                Grade.USUAL,
                ProteinBasis.CRUDE,
                true,
                false,
                IntervalOf.STUDY);
    }

    private static Optional<Grade> worst(Evidence.PooledEvidence some) {
        return some.findings()
                .flatMap(finding -> Stream.concat(
                        Stream.of(finding.result().cited().check()),
                        finding.steps().stream().flatMap(Coverage::grades)))
                .max(Comparator.naturalOrder());
    }

    private static Stream<Grade> grades(HarmonisationStep step) {
        if (step instanceof HarmonisationStep.ToUnit unit && unit.step() instanceof ChainStep.PublishedStep published) {
            return Stream.of(published.row().cited().check());
        }
        if (step instanceof HarmonisationStep.ByStages stages) {
            return Stream.concat(stages.kept().stream(), stages.dropped().stream())
                    .map(split -> split.cited().check());
        }
        return Stream.empty();
    }
}
