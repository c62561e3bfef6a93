package org.scalepan.literature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.ChainStep;

/**
 * Selects the eligible published results of a question and their weights: boundary equal or converted by the source's own stage split, form
 * equal, region by nearest match, land-use change as asked where any result is. The weights come of the hierarchy of the studies.
 */
public final class Pool {
    private final Library library;
    private final PoolQuestion question;
    private final List<Unused> unused = new ArrayList<>();

    private Pool(Library library, PoolQuestion question) {
        this.library = library;
        this.question = question;
    }

    /** The evidence for a question. */
    public static Evidence of(Library library, PoolQuestion question) {
        return EvidenceCache.of(library).get(question, asked -> new Pool(library, asked).evidence());
    }

    private Evidence evidence() {
        List<PublishedResult> candidates = candidates();
        if (candidates.isEmpty()) {
            if (question.indicator().isOfRecordsAlone()) {
                return new Evidence.NoEvidence(
                        question,
                        "only a farm's own meters count " + question.indicator().id()
                                + ": records can be asked for it (POST /v1/footprint), and no publication stands beside them"
                                + sibling(),
                        unused);
            }
            return new Evidence.NoEvidence(
                    question,
                    "no published " + question.indicator().id() + " result of "
                            + question.product().name() + " is in this library" + sibling(),
                    unused);
        }
        Harmonisation harmonisation = new Harmonisation(library, question);
        List<Harmonised> usable = new ArrayList<>();
        for (PublishedResult result : candidates) {
            Optional<String> barred = barred(result);
            if (barred.isPresent()) {
                unused.add(new Unused(result, barred.get()));
                continue;
            }
            Harmonisation.HarmonisationOutcome outcome = harmonisation.harmonise(result);
            if (outcome instanceof Harmonisation.HarmonisationOutcome.Usable yes) {
                usable.add(yes.harmonised());
            } else if (outcome instanceof Harmonisation.HarmonisationOutcome.Unusable no) {
                unused.add(new Unused(result, no.reason()));
            }
        }
        return pooled(landOnce(oneForEachFinding(oneKindOfEnergy(usable))));
    }

    /** Energy of different kinds is not one quantity: the kind nearest to all primary energy is kept. */
    private List<Harmonised> oneKindOfEnergy(List<Harmonised> usable) {
        Optional<EnergyKind> kept = usable.stream()
                .flatMap(item -> EnergyKind.of(item.result()).stream())
                .min(Comparator.naturalOrder());
        if (kept.isEmpty()) {
            return usable;
        }
        List<Harmonised> same = usable.stream()
                .filter(item -> EnergyKind.of(item.result()).equals(kept))
                .toList();
        usable.stream()
                .filter(item -> !same.contains(item))
                .forEach(item -> unused.add(new Unused(
                        item.result(),
                        "it counts "
                                + EnergyKind.of(item.result()).orElseThrow().words()
                                + ", which is not pooled with "
                                + kept.get().words())));
        return same;
    }

    /** An indicator in the same unit that is held, such as the water footprint where withdrawals are asked for: it is not the same. */
    private String sibling() {
        Set<String> products = products();
        return library.indicators().values().stream()
                .filter(other -> !other.equals(question.indicator())
                        && other.unit().equals(question.indicator().unit())
                        && library.results().stream()
                                .anyMatch(result -> products.contains(result.product())
                                        && result.indicator().equals(other.id())))
                .findFirst()
                .map(other -> "; " + other.id() + ", which counts another thing, is held")
                .orElse("");
    }

    private List<PublishedResult> candidates() {
        Set<String> products = products();
        return library.results().stream()
                .filter(result -> products.contains(result.product())
                        && result.indicator().equals(question.indicator().id()))
                .toList();
    }

    private Set<String> products() {
        return library.withNarrower(question.product()).stream()
                .map(Product::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Results that the question itself excludes. */
    private Optional<String> barred(PublishedResult result) {
        String source = result.cited().source();
        if (!result.form().equals(question.form())) {
            return Optional.of(
                    "it is about the form " + result.form() + "; ask for " + result.product() + ":" + result.form());
        }
        if (!result.cited().check().isAtLeast(question.lowestGrade())) {
            return Optional.of("its check grade is " + result.cited().check().id() + ", below grade="
                    + question.lowestGrade().id());
        }
        if (!question.pinned().isEmpty() && !question.pinned().contains(source)) {
            return Optional.of("sources= pins others");
        }
        return question.excluded().contains(source) ? Optional.of("exclude= drops its source") : Optional.empty();
    }

    /**
     * Alternative statements of one finding are never pooled. One that treats land-use change as asked, or does not say, is preferred; then
     * a number that was seen to one from memory; then the one that needs the fewest conversions.
     */
    private List<Harmonised> oneForEachFinding(List<Harmonised> usable) {
        Map<String, List<Harmonised>> byFinding = new LinkedHashMap<>();
        usable.forEach(item -> byFinding
                .computeIfAbsent(item.result().finding(), finding -> new ArrayList<>())
                .add(item));
        Comparator<Harmonised> best = Comparator.comparing(Harmonised::opposesLandUse)
                .thenComparing(item -> item.result().cited().check() == Grade.MEMORY)
                .thenComparing(Pool::conversions);
        List<Harmonised> chosen = new ArrayList<>();
        for (List<Harmonised> alternatives : byFinding.values()) {
            Harmonised one = alternatives.stream().min(best).orElseThrow();
            chosen.add(one);
            if (!one.opposesLandUse()) {
                alternatives.stream().filter(Harmonised::opposesLandUse).forEach(this::opposed);
            }
        }
        return chosen;
    }

    /** Leaves out a result that treats land-use change otherwise than asked, because another does not. */
    private void opposed(Harmonised item) {
        unused.add(new Unused(
                item.result(),
                question.luc() == LandUseChange.EXCLUDE
                        ? "land-use change is counted in it, and results are left that leave it out or do not say"
                        : "land-use change is left out of it, and results are left that count it or do not say"));
    }

    /** Land that a study gives at the farm gate itself goes before what it gives at retail: the two are one finding. */
    private List<Harmonised> landOnce(List<Harmonised> findings) {
        List<Harmonised> kept = new ArrayList<>();
        for (Harmonised item : findings) {
            boolean again = item.says(Note.Codes.LAND_FROM_RETAIL)
                    && findings.stream()
                            .anyMatch(other -> other.result().boundary() == question.boundary()
                                    && other.result()
                                            .study()
                                            .equals(item.result().study())
                                    && other.result()
                                            .product()
                                            .equals(item.result().product()));
            if (again) {
                unused.add(new Unused(
                        item.result(),
                        "its study has land at " + question.boundary().id() + " too, which is the same finding"));
            } else {
                kept.add(item);
            }
        }
        return kept;
    }

    /**
     * A result that counts land-use change is never pooled with others where the question leaves it out, nor the other way round. Left
     * alone it speaks, as a bound.
     */
    private List<Harmonised> asLandUseIsAsked(List<Harmonised> findings) {
        List<Harmonised> others =
                findings.stream().filter(item -> !item.opposesLandUse()).toList();
        if (others.isEmpty() || others.size() == findings.size()) {
            return findings;
        }
        findings.stream().filter(Harmonised::opposesLandUse).forEach(this::opposed);
        return others;
    }

    /** A result that nobody can look up is used only where there is no other. */
    private List<Harmonised> identifiedFirst(List<Harmonised> findings) {
        List<Harmonised> identified = findings.stream()
                .filter(item -> !item.says(Note.Codes.PUBLICATION_NOT_IDENTIFIED))
                .toList();
        if (identified.isEmpty() || identified.size() == findings.size()) {
            return findings;
        }
        findings.stream()
                .filter(item -> item.says(Note.Codes.PUBLICATION_NOT_IDENTIFIED))
                .forEach(item -> unused.add(new Unused(
                        item.result(),
                        "its publication is not identified, and results are left whose publication is")));
        return identified;
    }

    /** What a review includes is not counted a second time beside it. */
    private List<Harmonised> reviewsOnce(List<Harmonised> findings) {
        ReviewOverlap overlap = new ReviewOverlap(library, findings);
        List<Harmonised> kept = new ArrayList<>();
        for (Harmonised item : findings) {
            Optional<PublishedResult> review = overlap.reviewOf(item);
            review.ifPresentOrElse(by -> unused.add(ReviewOverlap.unused(item, by)), () -> kept.add(item));
        }
        return kept;
    }

    /** How many conversions the printed number needs to reach the basis. */
    private static double conversions(Harmonised item) {
        double conversions = 0;
        for (HarmonisationStep step : item.steps()) {
            if (step instanceof HarmonisationStep.ToUnit unit) {
                conversions += unit.step() instanceof ChainStep.PublishedStep ? 1 : 0;
            } else if (step instanceof HarmonisationStep.ToWarmingSet warming) {
                // Between two sets to start from, the nearer one: its factor is closer to 1.
                conversions += 1 + Math.abs(Math.log(warming.multiplier()));
            } else {
                conversions += 1;
            }
        }
        return conversions
                + item.notes().stream()
                        .filter(note -> note.code().equals(Note.Codes.OTHER_WARMING_SET)
                                || note.code().startsWith("luc-"))
                        .count();
    }

    private Evidence pooled(List<Harmonised> findings) {
        for (String region : library.regions().outwards(question.region())) {
            List<Harmonised> here = findings.stream()
                    .filter(item ->
                            library.regions().contains(region, item.result().region()))
                    .toList();
            if (!here.isEmpty()) {
                findings.stream()
                        .filter(item -> !here.contains(item))
                        .forEach(item -> unused.add(new Unused(
                                item.result(), "it is about " + item.result().region() + ", outside " + region)));
                List<Study> studies = studies(reviewsOnce(identifiedFirst(asLandUseIsAsked(here))));
                Optional<StudyHierarchy> hierarchy = StudyHierarchy.of(
                        question, studies, library.spreadDefaults().betweenStudies());
                if (question.of() == IntervalOf.FARM
                        && hierarchy.filter(pool -> !pool.knowsFarms()).isPresent()) {
                    return new Evidence.NoEvidence(
                            question,
                            "no study of " + question.product().name()
                                    + " publishes how much its farms differ, so that nothing is"
                                    + " known of the next farm; of=study asks for the next study",
                            unused);
                }
                return new Evidence.PooledEvidence(
                        question, studies, hierarchy, region, library.regions().words(region), unused);
            }
        }
        return new Evidence.NoEvidence(
                question,
                "no " + question.indicator().id() + " result of "
                        + question.product().name() + " (" + question.form()
                        + ") can be converted to this basis, "
                        + question.boundary().id() + " per "
                        + question.per().words() + ": "
                        + why(),
                unused);
    }

    /** Why results of the form asked for could not be used: their boundaries in one clause, other reasons one by one. */
    private String why() {
        List<Unused> ofForm = unused.stream()
                .filter(item -> item.result().form().equals(question.form()))
                .toList();
        List<Unused> sameForm = ofForm.stream().filter(this::isGoodEnough).toList();
        if (sameForm.isEmpty() && !ofForm.isEmpty()) {
            return question.lowestGrade() == Grade.SECONDARY
                    ? "no number of it was seen for this library"
                    : "no number of it was checked as well as grade="
                            + question.lowestGrade().id() + " asks";
        }
        if (sameForm.isEmpty()) {
            return "its results are about other forms, "
                    + joined(unused.stream().map(item -> item.result().form()));
        }
        List<String> reasons = new ArrayList<>();
        String elsewhere = joined(sameForm.stream()
                .map(item -> item.result().boundary())
                .filter(boundary -> boundary != question.boundary())
                .map(Boundary::id));
        if (!elsewhere.isEmpty()) {
            reasons.add("results end at " + elsewhere + ", and no published stage split leads from there");
        }
        sameForm.stream()
                .filter(item -> item.result().boundary() == question.boundary())
                .map(Unused::reason)
                .distinct()
                .limit(2)
                .forEach(reasons::add);
        return String.join("; ", reasons);
    }

    private boolean isGoodEnough(Unused item) {
        return item.result().cited().check().isAtLeast(question.lowestGrade());
    }

    private static String joined(Stream<String> words) {
        return String.join(", ", words.distinct().toList());
    }

    private List<Study> studies(List<Harmonised> findings) {
        Map<String, List<Harmonised>> byStudy = new LinkedHashMap<>();
        findings.forEach(item -> byStudy.computeIfAbsent(item.result().study(), study -> new ArrayList<>())
                .add(item));
        return byStudy.entrySet().stream()
                .map(entry -> new Study(entry.getKey(), wholeBeforeParts(entry.getValue())))
                .toList();
    }

    /**
     * Of a study with a result for the very region asked for, results for parts of that region are not counted: the whole includes them.
     */
    private List<Harmonised> wholeBeforeParts(List<Harmonised> findings) {
        List<Harmonised> whole = findings.stream()
                .filter(item -> item.result().region().equals(question.region()))
                .toList();
        if (whole.isEmpty() || whole.size() == findings.size()) {
            return findings;
        }
        findings.stream()
                .filter(item -> !whole.contains(item))
                .forEach(item -> unused.add(new Unused(
                        item.result(),
                        "its study covers " + question.region() + " as a whole, which includes "
                                + item.result().region())));
        return whole;
    }
}
