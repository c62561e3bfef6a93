package org.scalepan.literature;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.Regions;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut;

/**
 * Whether the intervals of this library hold what they promise: each study of each pool is left out in turn, and it is counted how often the
 * interval that the others give for the next study holds it.
 *
 * <p>The pools are those of questions that name no more than product, form, indicator and boundary. One whose findings are all in another,
 * such as a product in the broader one that includes it, is counted there. A source may still stand in several pools, of several products,
 * indicators and boundaries, so that the cases are not independent and the limits are somewhat too narrow.
 *
 * @param pools how many pools have two or more studies
 * @param leftOut every study left out, by pool
 * @param tables the table of all, then one for each indicator with cases
 */
public record Calibration(int pools, List<StudyLeftOut> leftOut, List<CalibrationTable> tables) {
    public Calibration {
        leftOut = List.copyOf(leftOut);
        tables = List.copyOf(tables);
    }

    /**
     * One study left out of its pool.
     *
     * @param question the question that the pool answers
     * @param study source id of the study
     * @param place how many others remain, and where the study lies among what they promise
     */
    public record StudyLeftOut(PoolQuestion question, String study, LeaveOneOut.LeftOut place) {}

    /**
     * How often studies were held.
     *
     * @param indicator the indicator whose pools these are; empty for all
     * @param rows by number of remaining studies, then by coverage; of one indicator only rows with cases
     */
    public record CalibrationTable(Optional<Indicator> indicator, List<LeaveOneOut.HeldOut> rows) {
        public CalibrationTable {
            rows = List.copyOf(rows);
        }
    }

    /** The pool of a question. */
    private record StatedPool(
            PoolQuestion question, List<Study> studies, StudyHierarchy hierarchy, Set<String> findings) {
        boolean isWithin(StatedPool other) {
            return question.indicator().equals(other.question.indicator())
                    && question.boundary() == other.question.boundary()
                    && other.findings.containsAll(findings);
        }
    }

    /** The calibration of a library, computed once. */
    public static Calibration of(Library library) {
        return library.view(Calibration.class, Calibration::computed);
    }

    private static Calibration computed(Library library) {
        List<StatedPool> pools = pools(library);
        List<StudyLeftOut> leftOut =
                pools.stream().flatMap(pool -> leftOut(library, pool)).toList();
        List<CalibrationTable> tables = new ArrayList<>();
        tables.add(new CalibrationTable(Optional.empty(), table(leftOut)));
        for (Indicator indicator : library.indicators().values()) {
            List<StudyLeftOut> own = leftOut.stream()
                    .filter(one -> one.question().indicator().equals(indicator))
                    .toList();
            if (!own.isEmpty()) {
                tables.add(new CalibrationTable(
                        Optional.of(indicator),
                        table(own).stream().filter(row -> row.cases() > 0).toList()));
            }
        }
        return new Calibration(pools.size(), leftOut, tables);
    }

    private static List<LeaveOneOut.HeldOut> table(List<StudyLeftOut> leftOut) {
        return LeaveOneOut.table(leftOut.stream().map(StudyLeftOut::place).toList());
    }

    private static Stream<StudyLeftOut> leftOut(Library library, StatedPool pool) {
        List<LeaveOneOut.LeftOut> places = LeaveOneOut.leftOut(
                pool.hierarchy().effects(), library.spreadDefaults().betweenStudies());
        return IntStream.range(0, places.size())
                .mapToObj(i ->
                        new StudyLeftOut(pool.question(), pool.studies().get(i).id(), places.get(i)));
    }

    /** The pools with two or more studies, each finding of a basis in one pool only where one holds all of another. */
    private static List<StatedPool> pools(Library library) {
        List<StatedPool> all = questions(library).stream()
                .flatMap(question -> stated(library, question).stream())
                .filter(pool -> pool.studies().size() > 1)
                .toList();
        List<StatedPool> kept = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            StatedPool one = all.get(i);
            boolean counted = false;
            for (int j = 0; j < all.size(); j++) {
                StatedPool other = all.get(j);
                // Of two that are the same the first is kept.
                counted |= j != i && one.isWithin(other) && (j < i || !other.isWithin(one));
            }
            if (!counted) {
                kept.add(one);
            }
        }
        return kept;
    }

    private static Optional<StatedPool> stated(Library library, PoolQuestion question) {
        return Pool.of(library, question) instanceof Evidence.PooledEvidence some
                ? some.hierarchy()
                        .map(hierarchy -> new StatedPool(
                                question,
                                some.studies(),
                                hierarchy,
                                some.findings()
                                        .map(finding -> finding.result().finding())
                                        .collect(Collectors.toUnmodifiableSet())))
                : Optional.empty();
    }

    private static List<PoolQuestion> questions(Library library) {
        List<PoolQuestion> questions = new ArrayList<>();
        for (Product product : library.products().values()) {
            for (Indicator indicator : library.indicators().values()) {
                for (String form : forms(library, product, indicator)) {
                    for (Boundary boundary : boundaries(indicator)) {
                        questions.add(question(library, product, form, indicator, boundary));
                    }
                }
            }
        }
        return questions;
    }

    private static List<String> forms(Library library, Product product, Indicator indicator) {
        Set<String> products = new HashSet<>();
        library.withNarrower(product).forEach(one -> products.add(one.id()));
        return library.results().stream()
                .filter(result -> products.contains(result.product())
                        && result.indicator().equals(indicator.id()))
                .map(PublishedResult::form)
                .distinct()
                .toList();
    }

    /** Feed is counted at the animal, whichever boundary is asked. */
    private static List<Boundary> boundaries(Indicator indicator) {
        return indicator.isFeed() ? List.of(indicator.defaultBoundary()) : List.of(Boundary.values());
    }

    private static PoolQuestion question(
            Library library, Product product, String form, Indicator indicator, Boundary boundary) {
        return new PoolQuestion(
                product,
                form,
                indicator,
                FunctionalUnit.of(indicator.defaultPer()).orElse(FunctionalUnit.KG_PROTEIN),
                boundary,
                LandUseChange.EXCLUDE,
                library.defaultWarmingSet(),
                Regions.WORLD,
                Set.of(),
                Set.of(),
                Grade.SECONDARY,
                ProteinBasis.CRUDE,
                true,
                false,
                IntervalOf.STUDY);
    }
}
