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
import org.scalepan.words.DisplayName;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

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
                        sibling(Message.of(
                                "evidence.own-meters",
                                "indicator",
                                question.indicator().id())),
                        unused);
            }
            return new Evidence.NoEvidence(
                    question,
                    sibling(Message.of(
                            "evidence.none", "indicator", question.indicator().id(), "product", product())),
                    unused);
        }
        Harmonisation harmonisation = new Harmonisation(library, question);
        List<Harmonised> usable = new ArrayList<>();
        for (PublishedResult result : candidates) {
            Optional<Message> barred = barred(result);
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
                        Message.of(
                                "unused.energy-kind",
                                "kind",
                                EnergyKind.of(item.result()).orElseThrow().message(),
                                "kept",
                                kept.get().message()))));
        return same;
    }

    /** An indicator in the same unit that is held, such as the water footprint where withdrawals are asked for: it is not the same. */
    private Message sibling(Message none) {
        Set<String> products = products();
        return library.indicators().values().stream()
                .filter(other -> !other.equals(question.indicator())
                        && other.unit().equals(question.indicator().unit())
                        && library.results().stream()
                                .anyMatch(result -> products.contains(result.product())
                                        && result.indicator().equals(other.id())))
                .findFirst()
                .map(other -> Message.of("evidence.sibling", "none", none, "other", other.id()))
                .orElse(none);
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
    private Optional<Message> barred(PublishedResult result) {
        String source = result.cited().source();
        if (!result.form().equals(question.form())) {
            return Optional.of(Message.of(
                    "unused.form", "form", result.form(), "product", result.product(), "asked", result.form()));
        }
        if (!result.cited().check().isAtLeast(question.lowestGrade())) {
            return Optional.of(Message.of(
                    "unused.grade",
                    "check",
                    result.cited().check().id(),
                    "grade",
                    question.lowestGrade().id()));
        }
        if (!question.pinned().isEmpty() && !question.pinned().contains(source)) {
            return Optional.of(Message.of("unused.pinned"));
        }
        return question.excluded().contains(source) ? Optional.of(Message.of("unused.excluded")) : Optional.empty();
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
                Message.of(question.luc() == LandUseChange.EXCLUDE ? "unused.luc-counted" : "unused.luc-left-out")));
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
                        Message.of(
                                "unused.same-land",
                                "boundary",
                                question.boundary().id())));
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
                .forEach(item -> unused.add(new Unused(item.result(), Message.of("unused.unidentified"))));
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
                                item.result(),
                                Message.of("unused.region", "of", item.result().region(), "region", region))));
                List<Study> studies = studies(reviewsOnce(identifiedFirst(asLandUseIsAsked(here))));
                Optional<StudyHierarchy> hierarchy = StudyHierarchy.of(
                        question, studies, library.spreadDefaults().betweenStudies());
                if (question.of() == IntervalOf.FARM
                        && hierarchy.filter(pool -> !pool.knowsFarms()).isPresent()) {
                    return new Evidence.NoEvidence(
                            question, Message.of("evidence.no-farms", "product", product()), unused);
                }
                return new Evidence.PooledEvidence(
                        question,
                        studies,
                        hierarchy,
                        region,
                        DisplayName.of("region." + region, library.regions().words(region)),
                        unused);
            }
        }
        return new Evidence.NoEvidence(
                question,
                Message.of(
                        "evidence.not-convertible",
                        "indicator",
                        question.indicator().id(),
                        "product",
                        product(),
                        "form",
                        question.form(),
                        "boundary",
                        question.boundary().id(),
                        "per",
                        question.per().message(),
                        "why",
                        why()),
                unused);
    }

    private DisplayName product() {
        return DisplayName.of(
                "product." + question.product().id(), question.product().name());
    }

    /** Why results of the form asked for could not be used: their boundaries in one clause, other reasons one by one. */
    private Message why() {
        List<Unused> ofForm = unused.stream()
                .filter(item -> item.result().form().equals(question.form()))
                .toList();
        List<Unused> sameForm = ofForm.stream().filter(this::isGoodEnough).toList();
        if (sameForm.isEmpty() && !ofForm.isEmpty()) {
            return question.lowestGrade() == Grade.SECONDARY
                    ? Message.of("evidence.unseen")
                    : Message.of(
                            "evidence.grade", "grade", question.lowestGrade().id());
        }
        if (sameForm.isEmpty()) {
            return Message.of(
                    "evidence.other-forms",
                    "forms",
                    joined(unused.stream().map(item -> item.result().form())));
        }
        List<Message> reasons = new ArrayList<>();
        String elsewhere = joined(sameForm.stream()
                .map(item -> item.result().boundary())
                .filter(boundary -> boundary != question.boundary())
                .map(Boundary::id));
        if (!elsewhere.isEmpty()) {
            reasons.add(Message.of("evidence.elsewhere", "boundaries", elsewhere));
        }
        sameForm.stream()
                .filter(item -> item.result().boundary() == question.boundary())
                .map(Unused::why)
                .distinct()
                .limit(2)
                .forEach(reasons::add);
        return Message.of("verbatim", "text", Listing.semicolons(reasons));
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
                        Message.of(
                                "unused.part",
                                "region",
                                question.region(),
                                "of",
                                item.result().region()))));
        return whole;
    }
}
