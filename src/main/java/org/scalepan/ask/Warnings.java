package org.scalepan.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.Note;
import org.scalepan.literature.PoolQuestion;
import org.scalepan.literature.StudyHierarchy;

/** Collects the warnings about the figures of an answer, each once, with the rows that it is about. */
public final class Warnings {
    /** Below this many studies an interval says more about the studies than about the world. */
    private static final int FEW = ThinEvidence.FEWEST_STUDIES;

    private static final Map<String, String> TEXTS = Map.ofEntries(
            Map.entry(
                    Note.Codes.ASSUMED_SPREAD,
                    "Some numbers are published without a spread; the one used is this library's assumption."),
            Map.entry(
                    Note.Codes.STATISTIC_MEAN,
                    "Some numbers are means without a spread, from which no median follows; they are used as they are."),
            Map.entry(
                    Note.Codes.MEMORY_GRADED,
                    "Some numbers were not seen in any text for this library; they are from memory and provisional"
                            + " (grade=secondary leaves them out)."),
            Map.entry(
                    Note.Codes.OTHER_WARMING_SET,
                    "Some results are under another or an unstated warming set and could not be converted; they are kept as"
                            + " published (strict=yes leaves them out)."),
            Map.entry(
                    Note.Codes.OPEN_GAS_SHARES,
                    "Some results are converted by their methane share alone; the unknown rest is drawn between N2O and CO2."),
            Map.entry(
                    Note.Codes.BY_STAGE_SPLIT,
                    "Some results end at retail or include land-use change and are carried to the boundary asked by their"
                            + " source's own split of world totals by stage."),
            Map.entry(
                    Note.Codes.SPLIT_OF_MEANS,
                    "Some splits by stage are of means and stand for a median with percentiles: what is after the farm is taken off"
                            + " each percentile, and the part without land-use change is drawn between its mean and the"
                            + " whole."),
            Map.entry(
                    Note.Codes.LAND_FROM_RETAIL,
                    "Some land at the farm gate is of results at retail: land after the farm is nil, losses after the farm remain in"
                            + " it."),
            Map.entry(
                    Note.Codes.LUC_NOT_STATED,
                    "Some results do not say whether emissions from land-use change are in them."),
            Map.entry(
                    Note.Codes.LUC_NOT_SPLIT,
                    "Some results treat land-use change otherwise than asked, and their sources do not split it."),
            Map.entry(
                    Note.Codes.FEED_BASIS_NOT_STATED,
                    "Some feed conversions do not say whether feed is counted as fed or dry; they are read as fed."),
            Map.entry(
                    Note.Codes.BROADER_PRODUCT,
                    "Some results are converted with the composition of the broader product that includes them."),
            Map.entry(
                    Note.Codes.MEMORY_CONVERSION,
                    "Some conversions rest on factors from memory (grade=secondary leaves them out)."),
            Map.entry(
                    Note.Codes.ASSUMED_CONVERSION_SPREAD,
                    "Some conversion factors are published without a spread; the one used is this library's assumption."),
            Map.entry(
                    Note.Codes.PUBLICATION_NOT_IDENTIFIED,
                    "Some numbers were seen, but their publication is not identified: they cannot be looked up or cited, and no"
                            + " sentence is made of them."),
            Map.entry(Note.Codes.OWN_ROWS, "Rows of your own library are in this answer."));

    private Warnings() {}

    /** The warnings for the estimates of one answer. */
    public static List<Warning> of(Library library, List<PublishedEstimate> estimates) {
        List<Warning> warnings = new ArrayList<>();
        fewStudies(estimates, warnings);
        noEvidence(estimates, warnings);
        regions(library, estimates, warnings);
        basis(estimates, warnings);
        forms(estimates, warnings);
        bounds(estimates, warnings);
        averagedProducts(estimates, warnings);
        LaterBoundaries.withTheOneAsked(library, estimates).ifPresent(warnings::add);
        notes(estimates, warnings);
        ownLibrary(library).ifPresent(warnings::add);
        return warnings;
    }

    /** The warning that a user's own rows were used, where there are any. */
    public static Optional<Warning> ownLibrary(Library library) {
        int own = library.version().ownRows();
        if (own == 0) {
            return Optional.empty();
        }
        String rows = own == 1 ? "1 row of a user's own library lies" : own + " rows of a user's own library lie";
        return Optional.of(new Warning("own-library", rows + " over the bundled one.", List.of()));
    }

    private static void fewStudies(List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<PublishedEstimate> thin = estimates.stream()
                .filter(estimate -> estimate.studies() > 0 && estimate.studies() - estimate.studiesFromMemory() < FEW)
                .toList();
        if (!thin.isEmpty()) {
            boolean memory = thin.stream().anyMatch(estimate -> estimate.studiesFromMemory() > 0);
            warnings.add(new Warning(
                    "few-studies",
                    "Fewer than " + FEW + " studies" + (memory ? ", those from memory not counted," : "")
                            + " cover these products: the evidence is thin.",
                    thin.stream()
                            .map(estimate -> estimate.item().written())
                            .distinct()
                            .toList()));
        }
    }

    private static void noEvidence(List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<String> silent = estimates.stream()
                .filter(estimate -> estimate.studies() == 0)
                .map(estimate -> estimate.item().written())
                .distinct()
                .toList();
        if (!silent.isEmpty()) {
            warnings.add(new Warning(
                    "no-evidence",
                    "No published result fits the question for these products; nothing is borrowed.",
                    silent));
        }
    }

    private static void regions(Library library, List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<String> parts = new ArrayList<>();
        for (PublishedEstimate estimate : estimates) {
            if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
                String asked = some.question().region();
                if (!some.regionUsed().equals(asked)) {
                    warnings.add(new Warning(
                            "region-fallback",
                            "No result for " + estimate.item().words() + " in "
                                    + library.regions().words(asked)
                                    + "; the nearest region with results is " + some.regionWords() + ".",
                            List.of(estimate.item().written())));
                }
                some.findings()
                        .filter(finding -> !finding.result().region().equals(some.regionUsed()))
                        .forEach(finding -> parts.add(finding.result().id()));
            }
        }
        if (!parts.isEmpty()) {
            warnings.add(new Warning(
                    "regional-results",
                    "Some results are about a part of the region of the answer, such as one country; they weigh"
                            + " like any other study.",
                    parts.stream().distinct().toList()));
        }
    }

    /** Warnings about the basis itself. */
    private static void basis(List<PublishedEstimate> estimates, List<Warning> warnings) {
        PoolQuestion question = estimates.get(0).evidence().question();
        List<String> products = estimates.stream()
                .map(estimate -> estimate.item().written())
                .distinct()
                .toList();
        if (question.boundary() == Boundary.ANIMAL && question.indicator().isWarming()) {
            warnings.add(new Warning(
                    "animal-boundary",
                    "Gases of the animals and their manure or frass alone are not the footprint of a product: feed, energy,"
                            + " housing and processing are left out. Ratios on this boundary must not be said of food.",
                    products));
        }
        if (question.indicator().id().equals("energy")) {
            warnings.add(new Warning(
                    "energy-kinds",
                    "Studies count energy differently (all primary energy, the non-renewable or the fossil part). One kind is"
                            + " pooled for each product (see energy_kind): two products may count different kinds.",
                    products));
        }
        if (question.per() == FunctionalUnit.KG_QUALITY_PROTEIN) {
            warnings.add(new Warning(
                    "quality-patterns",
                    "Protein quality was measured with different age patterns and methods, in animals or in vitro; the notes"
                            + " of the rows say which.",
                    products));
        }
    }

    private static void forms(List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<PublishedEstimate> speaking =
                estimates.stream().filter(estimate -> estimate.studies() > 0).toList();
        long forms = speaking.stream()
                .map(estimate -> estimate.item().form())
                .distinct()
                .count();
        if (forms > 1) {
            warnings.add(new Warning(
                    "form-mix",
                    "Products in different forms stand side by side (fresh, dried, meal): drying and milling are in some of"
                            + " the figures and not in others, and feed is not food.",
                    speaking.stream()
                            .map(estimate -> estimate.item().written())
                            .distinct()
                            .toList()));
        }
    }

    private static void bounds(List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<String> bounded = estimates.stream()
                .filter(estimate -> estimate.bound() != Bound.EXACT)
                .map(estimate -> estimate.item().written())
                .distinct()
                .toList();
        if (!bounded.isEmpty()) {
            warnings.add(new Warning(
                    "luc-bound",
                    "Every result of these products treats land-use change otherwise than asked, and no source splits it: the"
                            + " figure is a bound, and a ratio with it too. The other state of luc= is what they state.",
                    bounded));
        }
    }

    private static void averagedProducts(List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<String> averaged = estimates.stream()
                .filter(estimate -> estimate.hierarchy()
                        .filter(StudyHierarchy::averagesProducts)
                        .isPresent())
                .map(estimate -> estimate.item().written())
                .distinct()
                .toList();
        if (!averaged.isEmpty()) {
            String kinds = estimates.stream()
                    .flatMap(estimate -> estimate.hierarchy().stream())
                    .flatMap(StudyHierarchy::averagedProducts)
                    .distinct()
                    .collect(Collectors.joining(","));
            warnings.add(new Warning(
                    "kinds-averaged",
                    "A study of these products has results for several kinds, such as beef of beef herds and of dairy herds. Each kind"
                            + " counts the same in it, because no share of production is held; products=" + kinds
                            + " shows each alone.",
                    averaged));
        }
    }

    private static void notes(List<PublishedEstimate> estimates, List<Warning> warnings) {
        Map<String, Set<String>> byCode = new LinkedHashMap<>();
        for (PublishedEstimate estimate : estimates) {
            if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
                some.findings().forEach(finding -> collect(finding, byCode));
            }
        }
        byCode.forEach(
                (code, rows) -> warnings.add(new Warning(code, TEXTS.getOrDefault(code, code), List.copyOf(rows))));
    }

    private static void collect(Harmonised finding, Map<String, Set<String>> byCode) {
        finding.notes()
                .forEach(note -> byCode.computeIfAbsent(note.code(), code -> new LinkedHashSet<>())
                        .add(finding.result().id()));
    }
}
