package org.scalepan.production.insects;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.Flux;
import org.scalepan.production.Ledger;
import org.scalepan.production.Remark;
import org.scalepan.quantity.Amount;
import org.scalepan.quantity.Wording;

/** Holds a farm's records against what growers of the species usually find, and against conservation of matter. Remarks, never refusals. */
final class InsectPractice {
    /** Weeks without a harvest between cycles are usual; more days of cycles than a year has are not possible in one container. */
    private static final double DAYS = 365;

    private final Library library;
    private final InsectFarm farm;
    private final Ledger ledger;
    private final Optional<Amount> feedDryMatter;
    private final Optional<Amount> harvestDryMatter;

    InsectPractice(
            Library library,
            InsectFarm farm,
            Ledger ledger,
            Optional<Amount> feedDryMatter,
            Optional<Amount> harvestDryMatter) {
        this.library = library;
        this.farm = farm;
        this.ledger = ledger;
        this.feedDryMatter = feedDryMatter;
        this.harvestDryMatter = harvestDryMatter;
    }

    void remark() {
        farm.cycleDays().ifPresent(days -> usual("cycle-days", "a cycle of", days, "days"));
        farm.pairs().ifPresent(pairs -> usual("pairs-per-container", "stocking", pairs, "pairs per container"));
        if (farm.harvest() instanceof Harvest.ByContainer container) {
            usual(
                    "harvest-per-container",
                    "a harvest of",
                    container.kilogramsPerContainer(),
                    "kg per container and cycle");
            cycles(container);
            eggs(container);
        }
        if (farm.harvest() instanceof Harvest.ByNumber number) {
            usual("larvae-per-kg", "larvae of", number.larvaePerKilogram(), "to the kg");
        }
        matter();
    }

    private void usual(String quantity, String what, Amount value, String unit) {
        String species = farm.product().id();
        for (BackgroundFactor row : practice(quantity)) {
            double low = row.printed().low().orElse(Double.NEGATIVE_INFINITY);
            double high = row.printed().high().orElse(Double.POSITIVE_INFINITY);
            if (value.isBelow(low) || value.isAbove(high)) {
                ledger.remark(
                        Remark.UNUSUAL,
                        Wording.of(
                                told ->
                                        "%s %s %s is outside usual practice for %s (%s to %s; common practice, no source)"
                                                .formatted(
                                                        what, plain(told[0]), unit, species, plain(low), plain(high)),
                                value));
            }
        }
    }

    private List<BackgroundFactor> practice(String quantity) {
        return library.background("insect_practice").stream()
                .filter(row -> row.subject().equals(farm.product().id())
                        && row.quantity().equals(quantity)
                        && row.use().equals("practice"))
                .toList();
    }

    private void cycles(Harvest.ByContainer container) {
        farm.cycleDays()
                .filter(days -> container.cyclesPerYear().times(days).isAbove(DAYS))
                .ifPresent(days -> ledger.remark(
                        Remark.AGAINST_PHYSICS,
                        Wording.of(
                                told -> "%s cycles of %s days are more than a year in one container"
                                        .formatted(plain(told[0]), plain(told[1])),
                                container.cyclesPerYear(),
                                days)));
    }

    /** No more larvae can be harvested than eggs were laid. */
    private void eggs(Harvest.ByContainer container) {
        if (farm.pairs().isEmpty()) {
            return;
        }
        for (BackgroundFactor laid : practice("eggs-per-female")) {
            for (BackgroundFactor perKilogram : practice("larvae-per-kg")) {
                Amount eggs = farm.pairs()
                        .get()
                        .times(laid.printed()
                                .value()
                                .orElse(laid.printed().high().orElse(0)));
                Amount larvae = container
                        .kilogramsPerContainer()
                        .times(perKilogram.printed().low().orElse(0));
                if (larvae.isAbove(eggs)) {
                    ledger.remark(
                            Remark.AGAINST_PHYSICS,
                            Wording.of(
                                    told ->
                                            "%s kg per container are at least %s larvae, more than the %s eggs that %s pairs lay"
                                                    .formatted(
                                                            plain(told[0]),
                                                            plain(told[1]),
                                                            plain(told[2]),
                                                            plain(told[3])),
                                    container.kilogramsPerContainer(),
                                    larvae,
                                    eggs,
                                    farm.pairs().get()));
                }
            }
        }
    }

    private void matter() {
        if (feedDryMatter.isPresent()
                && harvestDryMatter.isPresent()
                && feedDryMatter.get().isBelow(harvestDryMatter.get())) {
            ledger.remark(
                    Remark.AGAINST_PHYSICS,
                    Wording.of(
                            told ->
                                    "the feed recorded holds less dry matter (%s kg) than the harvest (%s kg): feed is missing"
                                            .formatted(plain(told[0]), plain(told[1])),
                            feedDryMatter.get(),
                            harvestDryMatter.get()));
        } else if (feedDryMatter.isEmpty()
                && ledger.total(Flux.FEED).isBelow(farm.harvest().kilograms())) {
            ledger.remark(Remark.UNUSUAL, "less feed as fed than live harvest: look whether all feed is recorded");
        }
    }

    /** As a grower writes it: 28 days and not 28.0. */
    private static String plain(double value) {
        if (Double.isInfinite(value)) {
            return "no limit";
        }
        return BigDecimal.valueOf(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
