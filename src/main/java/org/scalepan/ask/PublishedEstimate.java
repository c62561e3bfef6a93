package org.scalepan.ask;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.literature.EnergyKind;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.Note;
import org.scalepan.literature.Pool;
import org.scalepan.literature.PoolQuestion;
import org.scalepan.literature.StudyHierarchy;
import org.scalepan.literature.Unused;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * The estimate for one product on a basis, from published results.
 *
 * @param evidence the results behind it, or why there are none
 * @param elsewhere when there is no evidence: published results of the product that do not fit the question
 * @param composition when there is no evidence: what the product consists of, from which its own footprint can be computed
 */
public record PublishedEstimate(
        ProductForm item,
        Evidence evidence,
        Optional<Footprint> footprint,
        Optional<Summary> summary,
        List<Unused> elsewhere,
        List<CompositionRow> composition)
        implements Estimate {
    private static final List<Message> LAND_USE_CHANGE = List.of(Message.of("land-use-change-emissions"));

    public PublishedEstimate {
        elsewhere = List.copyOf(elsewhere);
        composition = List.copyOf(composition);
    }

    @Override
    public DisplayName name() {
        return item.name();
    }

    @Override
    public Product product() {
        return item.product();
    }

    @Override
    public Optional<Footprint> drawn(CommonRandomNumbers random) {
        return evidence instanceof Evidence.PooledEvidence some
                ? Optional.of(some.footprint(random))
                : Optional.empty();
    }

    @Override
    public Optional<Message> why() {
        return evidence instanceof Evidence.NoEvidence none ? Optional.of(none.why()) : Optional.empty();
    }

    @Override
    public boolean hasEnoughStudies() {
        return bound() == Bound.EXACT && studies() - studiesFromMemory() >= ThinEvidence.FEWEST_STUDIES;
    }

    @Override
    public Optional<IntervalOf> speaksOf() {
        return hierarchy().map(StudyHierarchy::of);
    }

    @Override
    public Optional<String> intervalOf() {
        return summary.map(found -> speaksOf().map(IntervalOf::id).orElse("equal-weights"));
    }

    /** The mean of such studies, with its own interval, whatever is asked; empty where studies are not pooled by their differences. */
    public Optional<Summary> meanOfStudies() {
        return summary.flatMap(asked -> footprint.flatMap(found -> found.summaryOfMean(asked.coverage())));
    }

    /** How the studies are pooled by their differences; empty where there are none, or a finding is not above zero throughout. */
    public Optional<StudyHierarchy> hierarchy() {
        return evidence instanceof Evidence.PooledEvidence some ? some.hierarchy() : Optional.empty();
    }

    @Override
    public boolean isLowerBound() {
        return bound() == Bound.AT_LEAST;
    }

    @Override
    public Bound bound() {
        return evidence instanceof Evidence.PooledEvidence some ? some.bound() : Bound.EXACT;
    }

    @Override
    public List<Message> uncounted() {
        return bound() == Bound.AT_LEAST ? LAND_USE_CHANGE : List.of();
    }

    @Override
    public List<Message> countedBeyond() {
        return bound() == Bound.AT_MOST ? LAND_USE_CHANGE : List.of();
    }

    @Override
    public Optional<NoRatio> noRatio() {
        return evidence instanceof Evidence.PooledEvidence some
                        && some.findings().anyMatch(finding -> finding.result().intervalIncludesZero())
                ? Optional.of(NoRatio.INTERVAL_INCLUDES_ZERO)
                : Estimate.super.noRatio();
    }

    /** Which energy its studies count, where they are about energy. */
    public Optional<EnergyKind> energyKind() {
        return evidence instanceof Evidence.PooledEvidence some ? some.energyKind() : Optional.empty();
    }

    @Override
    public int studies() {
        return evidence instanceof Evidence.PooledEvidence some ? some.studies().size() : 0;
    }

    /** How many of the studies rest on a number from memory. */
    public int studiesFromMemory() {
        return evidence instanceof Evidence.PooledEvidence some
                ? (int) some.studies().stream()
                        .filter(study -> study.findings().stream()
                                .anyMatch(finding -> finding.result().cited().check() == Grade.MEMORY))
                        .count()
                : 0;
    }

    @Override
    public Optional<Grade> lowestGrade(Library library) {
        return lowestGrade();
    }

    @Override
    public List<String> sources(Library library) {
        return List.copyOf(evidence.sources());
    }

    @Override
    public String form() {
        return item.form();
    }

    /** The worst check grade among the published numbers used. */
    public Optional<Grade> lowestGrade() {
        return evidence instanceof Evidence.PooledEvidence some
                ? some.findings()
                        .map(finding -> finding.result().cited().check())
                        .max(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** True when there is no figure, and one where numbers may be used that nobody has seen. */
    public boolean isKnownUnseen(Library library) {
        PoolQuestion question = evidence.question();
        return evidence instanceof Evidence.NoEvidence
                && question.lowestGrade() != Grade.MEMORY
                && Pool.of(library, question.grade(Grade.MEMORY)) instanceof Evidence.PooledEvidence;
    }

    /** The region whose results are used: the one asked for, or the nearest that has any. */
    @Override
    public Optional<String> regionUsed() {
        return evidence instanceof Evidence.PooledEvidence some ? Optional.of(some.regionUsed()) : Optional.empty();
    }

    /** True when some result could not be put on the warming set asked for and is used as published. */
    public boolean keepsOtherWarmingSets() {
        return says(Note.Codes.OTHER_WARMING_SET);
    }

    /** True when the figure rests on a publication that nobody has identified: it is shown, marked, and no sentence quotes it. */
    public boolean isUnciteable() {
        return says(Note.Codes.PUBLICATION_NOT_IDENTIFIED);
    }

    /** True when rows of a user's own library are among those used. */
    public boolean ownRows() {
        return says(Note.Codes.OWN_ROWS);
    }

    private boolean says(String code) {
        return evidence instanceof Evidence.PooledEvidence some
                && some.findings()
                        .flatMap(finding -> finding.notes().stream())
                        .anyMatch(note -> note.code().equals(code));
    }

    @Override
    public int results() {
        return evidence instanceof Evidence.PooledEvidence some
                ? (int) some.findings().count()
                : 0;
    }
}
