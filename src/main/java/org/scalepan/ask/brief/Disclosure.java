package org.scalepan.ask.brief;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.factors.Grade;
import org.scalepan.factors.PublishedResult;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.LandUseChange;
import org.scalepan.production.practice.ModelledFarm;

/**
 * What rules for public comparisons ask to be said beside one, as a list of headings and statements.
 *
 * <p>Sources: what ISO 14044:2006 (4.2.3.7, 5.2, 6.3), ISO 14067:2018 and ISO 14021:2016 ask to be reported, and EU guidance that a
 * comparison of climate alone cannot by itself show what is preferable; clause numbers from memory. Information, not legal advice.
 */
public final class Disclosure {
    private static final String NOT_STATED = "not stated";

    private Disclosure() {}

    /** Headings with what is said under each, in the order in which they are read. */
    public static Map<String, String> of(Brief brief) {
        ComparisonBasis basis = brief.question().basis();
        Sentences sentences = new Sentences(basis, brief.question().sampling().coverage());
        Map<String, String> statements = new LinkedHashMap<>();
        statements.put(
                "Compared",
                brief.rows().stream().map(row -> row.estimate().words()).collect(Collectors.joining(", ")) + " with "
                        + brief.reference().words());
        statements.put(
                "Indicator", basis.indicator().name() + " (" + basis.indicator().unit() + ")");
        statements.put("Functional unit", "per " + basis.per().words());
        statements.put("System boundary", sentences.boundary());
        statements.put("Form and life stage", each(brief, Disclosure::form));
        statements.put("Regions and scale", each(brief, Disclosure::regions));
        statements.put("Years of the data", each(brief, Disclosure::years));
        if (basis.indicator().isWarming()) {
            statements.put(
                    "Warming set",
                    basis.gwp().name() + " asked; as published, "
                            + each(brief, estimate -> findings(estimate, PublishedResult::gwp))
                            + "; sets that could not be converted are kept; carbon dioxide that animals breathe out is not counted");
        }
        statements.put("Allocation", each(brief, estimate -> findings(estimate, result -> result.allocation())));
        statements.put("Land-use change", landUse(basis, brief));
        statements.put(
                "Figures and studies",
                each(
                        brief,
                        estimate -> estimate.summary()
                                        .map(figure -> estimate.bound().words() + sentences.footprint(figure))
                                        .orElse("no figure")
                                + ", "
                                + Sentences.studies(estimate)));
        statements.put("Data quality", each(brief, Disclosure::quality));
        statements.put("What changes the ranking", OtherRankings.of(brief));
        statements.put("What is displaced", "nothing is assumed to be displaced: a ratio is not a saving");
        statements.put("Review", "not reviewed by a panel of interested parties");
        statements.put(
                "Preference",
                (brief.otherIndicators().isEmpty() ? "one indicator only" : "each indicator by itself")
                        + ": this is not a claim that either is preferable overall, and other indicators may rank"
                        + " them otherwise");
        return statements;
    }

    private static String each(Brief brief, Function<Estimate, String> reported) {
        return brief.estimates().stream()
                .distinct()
                .map(estimate -> estimate.words() + ": " + reported.apply(estimate))
                .collect(Collectors.joining("; "));
    }

    private static String form(Estimate estimate) {
        String stage =
                estimate.product().stageEaten().map(eaten -> ", " + eaten).orElse("");
        return estimate.form().replace('-', ' ') + stage;
    }

    private static String regions(Estimate estimate) {
        if (estimate instanceof ModelledEstimate modelled) {
            return modelled.farm()
                    .map(ModelledFarm::farm)
                    .map(farm -> "reference farm, " + farm.climate() + " climate, "
                            + farm.region().map(region -> region + ", ").orElse("") + farm.scale() + " scale")
                    .orElse("no reference farm");
        }
        if (results(estimate).findAny().isEmpty() && estimate instanceof PublishedEstimate) {
            return "no study";
        }
        return estimate instanceof PublishedEstimate
                ? findings(estimate, result -> Optional.of(result.region())) + " ("
                        + findings(estimate, PublishedResult::scale) + ")"
                : "one farm, from its own records";
    }

    private static String years(Estimate estimate) {
        if (estimate instanceof ModelledEstimate) {
            return "those of the practice rows in the references";
        }
        if (!(estimate instanceof PublishedEstimate)) {
            return "the year of the records";
        }
        IntStream reported = results(estimate).flatMapToInt(result -> result.dataYear().stream());
        var range = reported.summaryStatistics();
        if (range.getCount() == 0) {
            return NOT_STATED;
        }
        String years = range.getMin() == range.getMax()
                ? Integer.toString(range.getMin())
                : range.getMin() + " to " + range.getMax();
        long all = results(estimate).count();
        return range.getCount() == all ? years : years + " (stated by " + range.getCount() + " of " + all + " results)";
    }

    /** How the numbers were seen, and how many were printed without a spread. */
    private static String quality(Estimate estimate) {
        if (!(estimate instanceof PublishedEstimate)) {
            return findings(estimate, result -> Optional.empty());
        }
        List<PublishedResult> all = results(estimate).toList();
        if (all.isEmpty()) {
            return "no study";
        }
        String seen = Stream.of(Grade.values())
                .filter(grade -> all.stream().anyMatch(result -> result.cited().check() == grade))
                .map(grade -> grade.id() + " "
                        + all.stream()
                                .filter(result -> result.cited().check() == grade)
                                .count())
                .collect(Collectors.joining(", "));
        long bare = all.stream()
                .filter(result -> result.printed().kind().id().equals("none"))
                .count();
        return seen + "; " + bare + " of " + all.size() + " printed without a spread";
    }

    private static String landUse(ComparisonBasis basis, Brief brief) {
        String asked =
                basis.luc() == LandUseChange.EXCLUDE ? "left out where reported separately" : "counted where reported";
        if (basis.evidence() == EvidenceKind.MODELLED) {
            return asked + "; feed factors as published";
        }
        return asked + "; as published, "
                + each(brief, estimate -> findings(estimate, result -> Optional.of(result.luc())));
    }

    private static String findings(Estimate estimate, Function<PublishedResult, Optional<String>> field) {
        if (estimate instanceof ModelledEstimate) {
            return "as its reference farm says";
        }
        if (!(estimate instanceof PublishedEstimate)) {
            return "as its records say";
        }
        TreeSet<String> reported = results(estimate)
                .map(result -> field.apply(result).orElse(NOT_STATED).replace('-', ' '))
                .collect(Collectors.toCollection(TreeSet::new));
        return reported.isEmpty() ? "no study" : String.join(", ", reported);
    }

    private static Stream<PublishedResult> results(Estimate estimate) {
        return estimate instanceof PublishedEstimate published
                        && published.evidence() instanceof Evidence.PooledEvidence some
                ? some.findings().map(Harmonised::result)
                : List.<PublishedResult>of().stream();
    }
}
