package org.scalepan.production.insects;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.FarmBalance.BalanceKind;
import org.scalepan.production.FarmBalance.BalanceVerdict;
import org.scalepan.production.FarmBalance.OutgoingContent;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.FeedContent;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.insects.AnimalContents.AnimalContent;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.words.Figure;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * The balances of an insect farm: nitrogen, dry matter and gross energy of larvae and frass against those of the feed.
 *
 * <p>The energy of the larvae is that of their protein and fat by the factors of food labels (17 and 37 kJ/g, Regulation (EU) 1169/2011,
 * Annex XIV), which leave out what the body cannot use: less than their heat of combustion, so that it errs to the side of the farm.
 */
final class InsectBalances {
    /**
     * Part of the feed's nitrogen in the larvae above which a farm is unusual: above all that is published of insects (0.38 to 0.55); the
     * limit itself is a choice of this service.
     */
    private static final double MOST_NITROGEN_KEPT = 0.65;

    private final Library library;
    private final InsectFarm farm;
    private final FarmInventory feed;
    private final InsectFactors factors;
    private final AnimalContents contents;
    private final InventoryBuilder builder;

    InsectBalances(Library library, InsectFarm farm, FarmInventory feed, InventoryBuilder builder) {
        this.library = library;
        this.farm = farm;
        this.feed = feed;
        this.factors = InsectFactors.of(library);
        this.builder = builder;
        this.contents = new AnimalContents(library, farm);
    }

    /** @param frassNitrogen kg N in frass that was weighed */
    void add(FrassInventory.WeighedNitrogen frassNitrogen) {
        builder.balance(nitrogen(frassNitrogen));
        builder.balance(dryMatter());
        builder.balance(grossEnergy());
    }

    private FarmBalance nitrogen(FrassInventory.WeighedNitrogen frass) {
        Optional<FeedContent> in = feed.feedContent(BalanceKind.NITROGEN);
        Optional<ActivityTerm> inLarvae = contents.nitrogenOf(farm.harvest().mass());
        Optional<OutgoingContent> out = inLarvae.map(larvae -> {
            List<String> rows = new ArrayList<>();
            if (farm.composition().nitrogen().isEmpty()) {
                contents.protein().ifPresent(share -> rows.addAll(share.rows()));
            }
            frass.row().ifPresent(rows::add);
            return new OutgoingContent(
                    ActivityTerm.sum(List.of(larvae, frass.kilograms().orElse(ActivityTerm.of(0)))),
                    frass.kilograms()
                            .map(weighed -> Message.of(
                                    "balance.larvae-and-frass",
                                    "larvae",
                                    printed(larvae.central()),
                                    "frass",
                                    printed(weighed.central())))
                            .orElseGet(() -> Message.of("balance.larvae-alone", "larvae", printed(larvae.central()))),
                    rows);
        });
        FarmBalance balance = FarmBalance.of(BalanceKind.NITROGEN, in, out, contents.missing("protein"));
        double kept = in.isPresent() && inLarvae.isPresent() && in.get().known().central() > 0
                ? inLarvae.get().central() / in.get().known().central()
                : 0;
        return balance.verdict() == BalanceVerdict.POSSIBLE && kept > MOST_NITROGEN_KEPT
                ? nitrogenKept(balance, kept)
                : balance;
    }

    private FarmBalance nitrogenKept(FarmBalance balance, double kept) {
        List<BackgroundFactor> published = library.background("insect_practice").stream()
                .filter(row -> row.quantity().equals("nitrogen-efficiency")
                        && row.cited().check().isAtLeast(Grade.SECONDARY)
                        && row.printed().value().isPresent())
                .toList();
        return balance.unusual(
                Message.of(
                        "balance.nitrogen-kept",
                        "kept",
                        printed(kept),
                        "published",
                        Listing.commas(published.stream()
                                .map(row -> Message.of(
                                        "balance.nitrogen-published",
                                        "product",
                                        row.subject(),
                                        "kept",
                                        printed(row.printed().value().orElseThrow()),
                                        "source",
                                        row.cited().source()))
                                .toList()),
                        "most",
                        printed(MOST_NITROGEN_KEPT)),
                published.stream().map(BackgroundFactor::id).toList());
    }

    /** Larvae alone: how moist the frass was when it was weighed is not recorded, and it varies several times over. */
    private FarmBalance dryMatter() {
        Optional<FeedContent> in = feed.feedContent(BalanceKind.DRY_MATTER);
        Optional<OutgoingContent> out = contents.dryMatter().map(share -> {
            ActivityTerm larvae = farm.harvest().mass().times(share.middle());
            return new OutgoingContent(
                    larvae, Message.of("balance.larvae-dry", "larvae", printed(larvae.central())), share.rows());
        });
        FarmBalance balance = FarmBalance.of(BalanceKind.DRY_MATTER, in, out, contents.missing("dry-matter"));
        if (balance.verdict() != BalanceVerdict.POSSIBLE) {
            return balance;
        }
        double perKilogram = in.orElseThrow().known().central() / kilograms();
        return factors.leastFeed(farm.product().id())
                .filter(least -> perKilogram < least.kilograms())
                .map(least -> balance.unusual(
                        Message.of(
                                "balance.little-feed",
                                "feed",
                                printed(perKilogram),
                                "least",
                                printed(least.kilograms()),
                                "source",
                                least.source()),
                        List.of(least.row())))
                .orElse(balance);
    }

    private FarmBalance grossEnergy() {
        Optional<AnimalContent> protein = contents.protein();
        Optional<AnimalContent> fat = contents.fat();
        Optional<InsectFactors.EnergyOfNutrient> ofProtein = factors.energy("protein");
        Optional<InsectFactors.EnergyOfNutrient> ofFat = factors.energy("fat");
        boolean known = protein.isPresent() && fat.isPresent() && ofProtein.isPresent() && ofFat.isPresent();
        return FarmBalance.of(
                BalanceKind.GROSS_ENERGY,
                feed.feedContent(BalanceKind.GROSS_ENERGY),
                known
                        ? Optional.of(larvalEnergy(protein.get(), fat.get(), ofProtein.get(), ofFat.get()))
                        : Optional.empty(),
                contents.missing(protein.isEmpty() ? "protein" : "fat"));
    }

    private OutgoingContent larvalEnergy(
            AnimalContent protein,
            AnimalContent fat,
            InsectFactors.EnergyOfNutrient ofProtein,
            InsectFactors.EnergyOfNutrient ofFat) {
        ActivityTerm megajoules = farm.harvest()
                .mass()
                .times(ActivityTerm.sum(List.of(
                        protein.middle().times(ofProtein.megajoules()),
                        fat.middle().times(ofFat.megajoules()))));
        List<String> rows = new ArrayList<>();
        rows.addAll(protein.rows());
        rows.addAll(fat.rows());
        rows.add(ofProtein.row());
        rows.add(ofFat.row());
        return new OutgoingContent(megajoules, Message.of("balance.larval-energy"), rows);
    }

    private double kilograms() {
        return farm.harvest().kilograms();
    }

    private static Figure printed(double amount) {
        return new Figure(SignificantFigures.text(amount, 3));
    }
}
