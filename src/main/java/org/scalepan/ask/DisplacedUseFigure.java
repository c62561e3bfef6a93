package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.production.DisplacedUse;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.Stage;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * The second figure of a farm that counts by-products as burden-free although they are sold: the same with their use elsewhere counted.
 *
 * @param ingredients the by-products
 * @param estimate the figure; none where nothing of the use elsewhere is known
 * @param missing what of the use elsewhere is not known, in sentences without full stop
 */
public record DisplacedUseFigure(List<String> ingredients, Optional<SystemEstimate> estimate, List<Message> missing) {
    public DisplacedUseFigure {
        ingredients = List.copyOf(ingredients);
        missing = List.copyOf(missing);
    }

    /** Of a side that is drawn with the random numbers of its question; none where nothing is counted burden-free or its burden is moot. */
    public static Optional<DisplacedUseFigure> drawn(
            Library library, Estimate estimate, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
        return estimate instanceof SystemEstimate own
                ? of(
                        own,
                        inventory -> SystemEstimate.of(
                                library, inventory, basis, own.scope().credit(), sampling, random))
                : Optional.empty();
    }

    /** The same with first-order propagation in place of draws. */
    public static Optional<DisplacedUseFigure> undrawn(Library library, SystemEstimate own, ComparisonBasis basis) {
        return of(
                own,
                inventory -> SystemEstimate.undrawn(
                        library, inventory, basis, own.scope().credit()));
    }

    private static Optional<DisplacedUseFigure> of(SystemEstimate own, Function<Inventory, SystemEstimate> estimated) {
        Optional<DisplacedUse> use = own.inventory().displacedUse();
        if (use.isEmpty() || own.scope().indicator().isFeed() || !counts(own)) {
            return Optional.empty();
        }
        Optional<SystemEstimate> estimate = use.get().isKnown(own.scope())
                ? own.inventory().withDisplacedUse().map(estimated)
                : Optional.empty();
        return Optional.of(new DisplacedUseFigure(
                use.get().ingredients(),
                estimate.filter(found -> found.system().isPresent()),
                use.get().unknown(own.scope()).stream()
                        .map(Gap::with)
                        .distinct()
                        .toList()));
    }

    /** Feed lies outside the boundary of the animals alone. */
    private static boolean counts(SystemEstimate own) {
        return own.scope().boundary().includes(Stage.FEED.boundary());
    }

    /** As a warning beside a figure of other records than these alone. */
    public Warning warning(Sentences sentences, String side) {
        return new Warning(
                "burden-free-by-product",
                Message.verbatim(sentences.measure() + ", " + side + ": "
                        + sentence(sentences, Optional.empty(), DisplayName.given(""))),
                ingredients);
    }

    /** In a sentence, with a ratio where there is one: {@code with the use elsewhere of … counted: 23 (15 to 36) kg CO2e per kg protein}. */
    public String sentence(Sentences sentences, Optional<Ratio> versus, DisplayName reference) {
        return sentences
                .language()
                .say(
                        "displaced",
                        "ingredients",
                        Listing.and(ingredients),
                        "n",
                        ingredients.size(),
                        "result",
                        result(sentences, versus, reference));
    }

    private Message result(Sentences sentences, Optional<Ratio> versus, DisplayName reference) {
        Listing unknown = Listing.semicolons(missing);
        if (estimate.isEmpty()) {
            return Message.of("displaced.unknown", "missing", unknown);
        }
        SystemEstimate found = estimate.get();
        Message figure = found.summary()
                .map(summary -> Message.of("displaced.is", "figure", sentences.footprint(summary, found.bound())))
                .orElseGet(() -> Message.of("displaced.higher"));
        Message compared = versus.map(ratio -> Message.of(
                        "displaced.versus",
                        "result",
                        figure,
                        "reference",
                        reference,
                        "ratio",
                        Sentences.ratio(ratio.timesLess(), ratio.bound(), sentences.language())))
                .orElse(figure);
        return missing.isEmpty() ? compared : Message.of("displaced.missing", "result", compared, "missing", unknown);
    }
}
