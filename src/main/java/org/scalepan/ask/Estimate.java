package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.literature.IntervalOf;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/** The estimate for one {@link Side} of a question on one basis, from the literature or from records. */
public sealed interface Estimate permits PublishedEstimate, SystemEstimate, ModelledEstimate {
    /** What it is called in a sentence. */
    DisplayName name();

    /** What it is called in an English sentence. */
    default String words() {
        return name().english();
    }

    /** The product. */
    Product product();

    /** The figure draw by draw, when there is evidence. */
    Optional<Footprint> footprint();

    /** Median, mean and interval of the figure, when there is evidence. */
    Optional<Summary> summary();

    /** The figure drawn again with other random numbers, when there is evidence. */
    Optional<Footprint> drawn(CommonRandomNumbers random);

    /** The form of the product. */
    String form();

    /** How many studies speak; none where records or practice do. */
    default int studies() {
        return 0;
    }

    /** How many published numbers are used. */
    default int results() {
        return 0;
    }

    /** The region whose results or practice are used; empty where there is no figure, and of somebody's records. */
    default Optional<String> regionUsed() {
        return Optional.empty();
    }

    /** The worst check grade of what the figure rests on; empty where there is none. */
    Optional<Grade> lowestGrade(Library library);

    /** Ids of the sources of the figure. */
    default List<String> sources(Library library) {
        return new Provenance(library, List.of(this))
                .references().stream().map(Reference::id).toList();
    }

    /** Why there is no figure. */
    Optional<Message> why();

    /** The same in English. */
    default Optional<String> missing() {
        return why().map(Message::english);
    }

    /** True when a ratio can be formed with it: there is a figure, and nothing that stands against a ratio. */
    default boolean isComparable() {
        return footprint().isPresent() && noRatio().isEmpty();
    }

    /** What stands against a ratio of the figure: a draw of it that is not above zero. */
    default Optional<NoRatio> noRatio() {
        return footprint().filter(Footprint::isPositive).isPresent()
                        || footprint().isEmpty()
                ? Optional.empty()
                : Optional.of(NoRatio.NOT_ABOVE_ZERO);
    }

    /**
     * True when the figure rests on enough studies whose numbers were seen, at least quoted elsewhere. A figure computed from records is about that farm alone and needs no others, but it must count all that is usual.
     */
    boolean hasEnoughStudies();

    /** True when the true figure is higher, because something required is not counted. */
    boolean isLowerBound();

    /** Whether the figure is the figure or a bound of it. */
    Bound bound();

    /**
     * What the interval speaks of, where studies are pooled by their differences. Of records it is what is known of these records alone, and
     * of studies that all weigh the same it is where they lie.
     */
    default Optional<IntervalOf> speaksOf() {
        return Optional.empty();
    }

    /** What the interval speaks of: mean, study or farm, {@code records}, {@code practice} or {@code equal-weights}; empty where there is none. */
    Optional<String> intervalOf();

    /** What is required and not counted, in words; empty when the figure is exact. */
    List<Message> uncounted();

    /** What is counted although the question leaves it out, in words; empty when the figure is exact. */
    List<Message> countedBeyond();

    /**
     * Why no ratio can be made with another although both have a figure: a farm's energy is all primary energy, and that of some
     * publications is a part of it. Empty where nothing is in the way.
     */
    default Optional<Message> unlike(Estimate other) {
        return Stream.of(energyOfPublication(this, other), energyOfPublication(other, this))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Message> energyOfPublication(Estimate computed, Estimate printed) {
        return !(computed instanceof PublishedEstimate) && printed instanceof PublishedEstimate published
                ? published
                        .energyKind()
                        .filter(kind -> !kind.mayStandBesideTotal())
                        .map(kind -> Message.of("unlike-energy", "product", published.name(), "kind", kind.message()))
                : Optional.empty();
    }

    /** How the records behind it contradict themselves, in words: then nothing can be said with the figure. Empty of publications. */
    default List<Message> contradictions() {
        return List.of();
    }
}
