package org.scalepan.production.insects;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.RecordedNumber;
import org.scalepan.words.Message;

/** What the fresh animals of a farm hold: what it states itself, and otherwise what the library has of the species. */
final class AnimalContents {
    private static final double PROTEIN_PER_NITROGEN = 6.25;

    private final InsectFarm farm;
    private final InsectFactors factors;

    AnimalContents(Library library, InsectFarm farm) {
        this.farm = farm;
        this.factors = InsectFactors.of(library);
    }

    /**
     * A content.
     *
     * @param share kg per kg of fresh animals
     * @param rows ids of the rows of the library behind it; none where the farm states it
     */
    record AnimalContent(ActivityTerm share, List<String> rows) {
        AnimalContent {
            rows = List.copyOf(rows);
        }

        /** The same in the middle of what the library has, so that only what the records leave open is uncertain. */
        ActivityTerm middle() {
            return share.ofRecordsAlone();
        }
    }

    Optional<AnimalContent> dryMatter() {
        return content(farm.composition().dryMatter().map(RecordedNumber::term), "dry-matter");
    }

    /** Crude protein. */
    Optional<AnimalContent> protein() {
        return content(farm.composition().proteinTerm(), "protein");
    }

    Optional<AnimalContent> fat() {
        return content(farm.composition().fat().map(RecordedNumber::term), "fat");
    }

    /** kg N in so many kg of fresh animals, in the middle of what the library has. */
    Optional<ActivityTerm> nitrogenOf(ActivityTerm mass) {
        return farm.composition()
                .nitrogen()
                .map(share -> mass.times(share.term()))
                .or(() -> protein().map(share -> mass.times(share.middle()).over(PROTEIN_PER_NITROGEN)));
    }

    private Optional<AnimalContent> content(Optional<ActivityTerm> stated, String quantity) {
        return stated.map(share -> new AnimalContent(share, List.of()))
                .or(() -> factors.content(farm.product().id(), quantity)
                        .map(factor -> new AnimalContent(
                                ActivityTerm.of(1).times(factor),
                                factor.row().stream().toList())));
    }

    /** Why a content is not known, in words. */
    Message missing(String what) {
        return farm.product().isOfRecords()
                ? Message.of(
                        "balance.not-stated",
                        "what",
                        Message.of("content." + what),
                        "product",
                        farm.product().label())
                : Message.of(
                        "balance.not-held",
                        "what",
                        Message.of("content." + what),
                        "product",
                        farm.product().id());
    }
}
