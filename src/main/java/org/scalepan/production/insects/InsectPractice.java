package org.scalepan.production.insects;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.Flux;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** Compares a farm's records with what is published of the species or growers usually find, and with conservation of matter. Remarks, never refusals. */
final class InsectPractice {
    /** Weeks without a harvest between cycles are usual; more days of cycles than days of a year are impossible in one container. */
    private static final double DAYS = 365;

    private static final double GRAMS_PER_KILOGRAM = 1000;
    /** What one or two trials found is no practice. */
    private static final int FEWEST_ROWS = 3;

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
        farm.cycleDays().ifPresent(days -> usual("cycle-days", "cycle", days.central()));
        farm.pairs().ifPresent(pairs -> usual("pairs-per-container", "stocking", pairs.central()));
        if (farm.harvest() instanceof Harvest.ByContainer container) {
            usual(
                    "harvest-per-container",
                    "harvest",
                    container.kilogramsPerContainer().central());
            cycles(container);
            eggs(container);
        }
        if (farm.harvest() instanceof Harvest.ByNumber number) {
            usual("larvae-per-kg", "larvae", number.each().toTheKilogram());
        }
        if (farm.harvest() instanceof Harvest.ByPairs pairs) {
            usual("larvae-per-kg", "larvae", pairs.each().toTheKilogram());
        }
        matter();
    }

    /**
     * Rows of named sources about what a record holds, in its unit. A cycle that counts the stocking too is a cycle, and the mass of a
     * larva is the number to the kilogram turned round.
     */
    private List<PublishedRange> published(String quantity) {
        return switch (quantity) {
            case "cycle-days" ->
                Stream.concat(sourced("cycle-days", number -> number), sourced("business-cycle-days", number -> number))
                        .toList();
            case "larvae-per-kg" ->
                Stream.concat(
                                sourced("larvae-per-kg", number -> number),
                                sourced("individual-mass", grams -> GRAMS_PER_KILOGRAM / grams))
                        .toList();
            default -> sourced(quantity, number -> number).toList();
        };
    }

    /** A row of a named source with the ends of what it found. */
    private record PublishedRange(BackgroundFactor row, double low, double high) {}

    private Stream<PublishedRange> sourced(String quantity, DoubleUnaryOperator inUnit) {
        return library.background("insect_practice").stream()
                .filter(row -> row.subject().equals(farm.product().id())
                        && row.quantity().equals(quantity)
                        && !row.use().equals("practice"))
                .map(row -> {
                    double value = row.printed().value().orElse(0);
                    double one = inUnit.applyAsDouble(row.printed().low().orElse(value));
                    double other = inUnit.applyAsDouble(row.printed().high().orElse(value));
                    return new PublishedRange(row, Math.min(one, other), Math.max(one, other));
                });
    }

    /** Held against named sources where there are enough of them, and otherwise against practice that has none. */
    private void usual(String quantity, String what, double value) {
        List<PublishedRange> published = published(quantity);
        if (published.size() >= FEWEST_ROWS) {
            double low =
                    published.stream().mapToDouble(PublishedRange::low).min().orElseThrow();
            double high =
                    published.stream().mapToDouble(PublishedRange::high).max().orElseThrow();
            if (value < low || value > high) {
                builder.remark(
                        Remark.UNUSUAL,
                        outside(
                                "remark.outside-published",
                                what,
                                value,
                                low,
                                high,
                                published.stream()
                                        .map(range -> range.row().cited().source())
                                        .distinct()
                                        .sorted()
                                        .collect(Collectors.joining(", "))),
                        published.stream().map(range -> range.row().id()).toArray(String[]::new));
            }
            return;
        }
        for (BackgroundFactor row : practice(quantity)) {
            double low = row.printed().low().orElse(Double.NEGATIVE_INFINITY);
            double high = row.printed().high().orElse(Double.POSITIVE_INFINITY);
            if (value < low || value > high) {
                builder.remark(
                        Remark.UNUSUAL, outside("remark.outside-practice", what, value, low, high, ""), row.id());
            }
        }
    }

    private Message outside(String key, String what, double value, double low, double high, String sources) {
        return Message.of(
                key,
                "what",
                Message.of("practice." + what, "value", new Figure(plain(value))),
                "product",
                farm.product().id(),
                "low",
                new Figure(plain(low)),
                "high",
                new Figure(plain(high)),
                "sources",
                sources);
    }

    private List<BackgroundFactor> practice(String quantity) {
        return library.background("insect_practice").stream()
                .filter(row -> row.subject().equals(farm.product().id())
                        && row.quantity().equals(quantity)
                        && row.use().equals("practice"))
                .toList();
    }

    private void cycles(Harvest.ByContainer container) {
        farm.cycleDays().map(RecordedNumber::central).ifPresent(days -> {
            if (container.cyclesPerYear().central() * days > DAYS) {
                builder.remark(
                        Remark.AGAINST_PHYSICS,
                        Message.of(
                                "remark.cycles",
                                "cycles",
                                new Figure(plain(container.cyclesPerYear().central())),
                                "days",
                                new Figure(plain(days))));
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
                double eggs = farm.pairs().get().central()
                        * laid.printed().value().orElse(laid.printed().high().orElse(0));
                double larvae = container.kilogramsPerContainer().central()
                        * perKilogram.printed().low().orElse(0);
                if (larvae > eggs) {
                    builder.remark(
                            Remark.AGAINST_PHYSICS,
                            Message.of(
                                    "remark.eggs",
                                    "kilograms",
                                    new Figure(plain(
                                            container.kilogramsPerContainer().central())),
                                    "larvae",
                                    new Figure(plain(larvae)),
                                    "eggs",
                                    new Figure(plain(eggs)),
                                    "pairs",
                                    new Figure(plain(farm.pairs().get().central()))));
                }
            }
        }
    }

    private void matter() {
        if (feedDryMatter.isEmpty() && builder.total(Flux.FEED) < farm.harvest().kilograms()) {
            builder.remark(Remark.UNUSUAL, Message.of("remark.little-feed"));
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
