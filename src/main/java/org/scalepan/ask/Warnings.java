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
import org.scalepan.literature.PoolQuestion;
import org.scalepan.literature.StudyHierarchy;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/** Collects the warnings about the figures of an answer, each once, with the rows that it is about. */
public final class Warnings {
    /** Below this many studies an interval says more about the studies than about the world. */
    private static final int FEW = ThinEvidence.FEWEST_STUDIES;

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
        return Optional.of(Warning.of("own-library", List.of(), "rows", own));
    }

    private static void fewStudies(List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<PublishedEstimate> thin = estimates.stream()
                .filter(estimate -> estimate.studies() > 0 && estimate.studies() - estimate.studiesFromMemory() < FEW)
                .toList();
        if (!thin.isEmpty()) {
            boolean memory = thin.stream().anyMatch(estimate -> estimate.studiesFromMemory() > 0);
            String key = memory ? "warning.few-studies.memory" : "warning.few-studies";
            warnings.add(new Warning(
                    "few-studies",
                    Message.of(key, "few", FEW),
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
            warnings.add(Warning.of("no-evidence", silent));
        }
    }

    private static void regions(Library library, List<PublishedEstimate> estimates, List<Warning> warnings) {
        List<String> parts = new ArrayList<>();
        for (PublishedEstimate estimate : estimates) {
            if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
                String asked = some.question().region();
                if (!some.regionUsed().equals(asked)) {
                    warnings.add(Warning.of(
                            "region-fallback",
                            List.of(estimate.item().written()),
                            "product",
                            estimate.item().name(),
                            "asked",
                            DisplayName.of("region." + asked, library.regions().words(asked)),
                            "used",
                            some.regionName()));
                }
                some.findings()
                        .filter(finding -> !finding.result().region().equals(some.regionUsed()))
                        .forEach(finding -> parts.add(finding.result().id()));
            }
        }
        if (!parts.isEmpty()) {
            warnings.add(
                    Warning.of("regional-results", parts.stream().distinct().toList()));
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
            warnings.add(Warning.of("animal-boundary", products));
        }
        if (question.indicator().id().equals("energy")) {
            warnings.add(Warning.of("energy-kinds", products));
        }
        if (question.per() == FunctionalUnit.KG_QUALITY_PROTEIN) {
            warnings.add(Warning.of("quality-patterns", products));
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
            warnings.add(Warning.of(
                    "form-mix",
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
            warnings.add(Warning.of("luc-bound", bounded));
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
            warnings.add(Warning.of("kinds-averaged", averaged, "kinds", kinds));
        }
    }

    private static void notes(List<PublishedEstimate> estimates, List<Warning> warnings) {
        Map<String, Set<String>> byCode = new LinkedHashMap<>();
        for (PublishedEstimate estimate : estimates) {
            if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
                some.findings().forEach(finding -> collect(finding, byCode));
            }
        }
        byCode.forEach((code, rows) -> warnings.add(Warning.of(code, List.copyOf(rows))));
    }

    private static void collect(Harmonised finding, Map<String, Set<String>> byCode) {
        finding.notes()
                .forEach(note -> byCode.computeIfAbsent(note.code(), code -> new LinkedHashSet<>())
                        .add(finding.result().id()));
    }
}
