package org.scalepan.production;

import java.util.Optional;
import org.scalepan.footprint.StatedContent;
import org.scalepan.footprint.StatedContent.StatedShare;
import org.scalepan.input.Obstacle;

/**
 * What a farm states that its harvested animals hold, as shares of their fresh weight; it goes before what the library has of the species.
 *
 * @param dryMatter kg per kg
 * @param protein kg crude protein per kg
 * @param nitrogen kg N per kg; crude protein is 6.25 times as much where {@code protein} is not stated
 * @param fat kg per kg
 */
public record StatedComposition(
        Optional<RecordedNumber> dryMatter,
        Optional<RecordedNumber> protein,
        Optional<RecordedNumber> nitrogen,
        Optional<RecordedNumber> fat) {
    /** Of a farm that states nothing. */
    public static final StatedComposition NONE =
            new StatedComposition(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** kg crude protein per kg nitrogen, as food labels and feed analyses count it (Regulation (EU) 1169/2011, Annex I). */
    private static final double PROTEIN_PER_NITROGEN = 6.25;

    /** Why no animal can hold this: parts that are more than the whole. */
    public Optional<Obstacle> obstacle() {
        double parts = proteinAtLeast() + fat.map(RecordedNumber::least).orElse(0.0);
        double whole = dryMatter.map(RecordedNumber::most).orElse(1.0);
        return parts > whole
                ? Optional.of(new Obstacle(
                        protein.isPresent() ? "protein" : nitrogen.isPresent() ? "nitrogen" : "fat",
                        "protein and fat are more than the dry matter that they are part of"))
                : Optional.empty();
    }

    private double proteinAtLeast() {
        return protein.map(RecordedNumber::least)
                .orElseGet(() -> nitrogen.map(RecordedNumber::least).orElse(0.0) * PROTEIN_PER_NITROGEN);
    }

    /** kg crude protein per kg of fresh animals. */
    public Optional<ActivityTerm> proteinTerm() {
        return protein.map(RecordedNumber::term)
                .or(() -> nitrogen.map(share -> share.term().times(PROTEIN_PER_NITROGEN)));
    }

    /** For the way from a unit to another. */
    StatedContent content() {
        return new StatedContent(
                dryMatter.map(share -> share(share, 1)),
                protein.map(share -> share(share, 1))
                        .or(() -> nitrogen.map(share -> share(share, PROTEIN_PER_NITROGEN))));
    }

    private static StatedShare share(RecordedNumber number, double scale) {
        double central = number.central() * scale;
        return number.factor()
                .map(factor ->
                        new StatedShare(Optional.of(factor.id()), factor.reading(), scale, central, factor.lnSd()))
                .orElseGet(() -> StatedShare.known(central));
    }
}
