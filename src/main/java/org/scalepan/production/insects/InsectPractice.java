package org.scalepan.production.insects;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.Flux;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Remark;

/** Compares a farm's records with what growers of the species usually find, and with conservation of matter. Remarks, never refusals. */
final class InsectPractice {
    /** Weeks without a harvest between cycles are usual; more days of cycles than days of a year are impossible in one container. */
    private static final double DAYS = 365;

    private final Library library;
    private final InsectFarm farm;
    private final InventoryBuilder builder;
    private final OptionalDouble feedDryMatter;

    InsectPractice(Library library, InsectFarm farm, InventoryBuilder builder, OptionalDouble feedDryMatter) {
        this.library = library;
        this.farm = farm;
        this.builder = builder;
        this.feedDryMatter = feedDryMatter;
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

    private void usual(String quantity, String what, double value, String unit) {
        String species = farm.product().id();
        for (BackgroundFactor row : practice(quantity)) {
            double low = row.printed().low().orElse(Double.NEGATIVE_INFINITY);
            double high = row.printed().high().orElse(Double.POSITIVE_INFINITY);
            if (value < low || value > high) {
                builder.remark(
                        Remark.UNUSUAL,
                        "%s %s %s is outside usual practice for %s (%s to %s; common practice, no source)"
                                .formatted(what, plain(value), unit, species, plain(low), plain(high)));
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
        farm.cycleDays().ifPresent(days -> {
            if (container.cyclesPerYear() * days > DAYS) {
                builder.remark(
                        Remark.AGAINST_PHYSICS,
                        "%s cycles of %s days are more than a year in one container"
                                .formatted(plain(container.cyclesPerYear()), plain(days)));
            }
        });
    }

    /** No more larvae can be harvested than eggs were laid. */
    private void eggs(Harvest.ByContainer container) {
        if (farm.pairs().isEmpty()) {
            return;
        }
        for (BackgroundFactor laid : practice("eggs-per-female")) {
            for (BackgroundFactor perKilogram : practice("larvae-per-kg")) {
                double eggs = farm.pairs().getAsDouble()
                        * laid.printed().value().orElse(laid.printed().high().orElse(0));
                double larvae = container.kilogramsPerContainer()
                        * perKilogram.printed().low().orElse(0);
                if (larvae > eggs) {
                    builder.remark(
                            Remark.AGAINST_PHYSICS,
                            "%s kg per container are at least %s larvae, more than the %s eggs that %s pairs lay"
                                    .formatted(
                                            plain(container.kilogramsPerContainer()),
                                            plain(larvae),
                                            plain(eggs),
                                            plain(farm.pairs().getAsDouble())));
                }
            }
        }
    }

    private void matter() {
        if (feedDryMatter.isEmpty() && builder.total(Flux.FEED) < farm.harvest().kilograms()) {
            builder.remark(Remark.UNUSUAL, "less feed as fed than live harvest: look whether all feed is recorded");
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
