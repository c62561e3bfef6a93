package org.scalepan.production.herd;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scalepan.input.Obstacle;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.TermFactor;
import org.scalepan.quantity.SevenDigits;

/**
 * The records of a herd or flock: category, number of heads and yields; the rest may be open.
 *
 * @param category animals: dairy-cattle, other-cattle, buffalo, sheep, goats, swine, layers, broilers, ducks
 * @param edition IPCC edition, 2019 or 2006; the former when absent
 * @param ipccRegion region of the IPCC tables; from the farm's region when absent
 * @param productivity mean, high or low; the first when absent
 * @param climate climate of the manure systems
 * @param heads animals present, averaged over the year
 * @param yields what the herd gives a year
 * @param manure where the manure goes
 * @param cattle what Tier 2 needs to know of cattle and buffalo
 * @param breedingStock where the animals that bear or lay the young are
 */
@RecordBuilder
public record Herd(
        FarmRecords records,
        String category,
        Optional<String> edition,
        Optional<String> ipccRegion,
        Optional<String> productivity,
        Optional<String> climate,
        RecordedNumber heads,
        List<Yield> yields,
        List<ManureShare> manure,
        Optional<Cattle> cattle,
        Optional<String> product,
        Optional<BreedingStock> breedingStock)
        implements HerdBuilder.With {
    private static final List<String> TIER_2 = List.of("dairy-cattle", "other-cattle", "buffalo");

    /** Shares written with a few digits may add to a little more or less than 1. */
    private static final double ROUNDING = 1e-6;

    public Herd {
        yields = List.copyOf(yields);
        manure = List.copyOf(manure);
    }

    /** Why Tier 2 cannot be computed for a kind of animal; its equations are for cattle and buffalo. */
    public static Optional<Obstacle> obstacleToTier2(String category) {
        return TIER_2.contains(category)
                ? Optional.empty()
                : Optional.of(
                        new Obstacle("cattle", "cattle (Tier 2) is for dairy-cattle, other-cattle and buffalo only"));
    }

    /**
     * Why the shares of the manure systems are invalid: they must add to 1, or where some are ranges be able to. No shares at all leave it
     * open.
     */
    public static Optional<Obstacle> obstacleInManure(List<ManureShare> manure) {
        double least =
                manure.stream().mapToDouble(share -> share.share().least()).sum();
        double most = manure.stream().mapToDouble(share -> share.share().most()).sum();
        if (manure.isEmpty() || (least <= 1 + ROUNDING && most >= 1 - ROUNDING)) {
            return Optional.empty();
        }
        return Optional.of(new Obstacle(
                "manure",
                "the shares of the manure systems add up to "
                        + (least == most
                                ? SevenDigits.plain(least)
                                : "something from " + SevenDigits.plain(least) + " to " + SevenDigits.plain(most))
                        + "; they must add up to 1"));
    }

    /** The part of the manure that each system gets: the shares, over their sum where some are ranges. */
    public static List<ActivityTerm> partsOfManure(List<ManureShare> manure) {
        List<ActivityTerm> shares =
                manure.stream().map(share -> share.share().term()).toList();
        return ActivityTerm.areCertain(shares)
                ? shares
                : IntStream.range(0, shares.size())
                        .mapToObj(place -> ActivityTerm.derived(new PartOfAll(place), shares))
                        .toList();
    }

    private record PartOfAll(int place) implements TermFactor.RecordFormula {
        @Override
        public double of(double[] inputs) {
            return inputs[place] / DoubleStream.of(inputs).sum();
        }
    }

    /** Why the records of a herd cannot name co-products: what it gives is its yield. */
    public static Optional<Obstacle> obstacleInCoProducts(FarmRecords records) {
        return records.coProducts().isEmpty()
                ? Optional.empty()
                : Optional.of(new Obstacle(
                        "co_products",
                        "what a herd gives stands in yield: milk_kg, eggs_kg, live_kg; leave co_products out"));
    }

    /** Where the animals are that bear or lay the young which become the herd. */
    public enum BreedingStock {
        /** Among the heads, and what they eat is in the feed. */
        INCLUDED("included"),
        /** With somebody else, from whom the young are bought: what they cause is not in the records. */
        BOUGHT_IN("bought-in"),
        /** There are none, or the figure is to be of these animals alone. */
        NONE("none");

        private final String id;

        BreedingStock(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }

        public static Optional<BreedingStock> of(String id) {
            return Stream.of(values()).filter(stock -> stock.id.equals(id)).findFirst();
        }
    }

    /** What a herd gives: eggs or milk as sold, or live animals; kg a year. */
    public record Yield(AnimalKind kind, RecordedNumber kilograms) {
        public Yield(AnimalKind kind, double kilograms) {
            this(kind, RecordedNumber.of(kilograms));
        }
    }

    /** Kinds of yield. */
    public enum AnimalKind {
        MILK(RecordField.MILK),
        EGGS(RecordField.EGGS),
        LIVE(RecordField.LIVE);

        private final RecordField field;

        AnimalKind(RecordField field) {
            this.field = field;
        }

        /** The field of the records that has its kg a year. */
        public RecordField field() {
            return field;
        }
    }

    /**
     * A manure system and the share of the manure it gets.
     *
     * @param system id of {@code ipcc_terms}
     */
    public record ManureShare(String system, RecordedNumber share) {
        public ManureShare(String system, double share) {
            this(system, RecordedNumber.of(share));
        }
    }

    /**
     * Tier 2 for cattle and buffalo.
     *
     * @param conversion Ym in percent, when it is known; from the tables otherwise
     * @param crudeProtein crude protein of the feed, percent of dry matter; for N excretion
     */
    public record Cattle(HeadRecords head, Optional<RecordedNumber> conversion, Optional<RecordedNumber> crudeProtein) {
        /** The animal that energy is computed for, with every record in the middle. */
        public EnergyNeed.Animal animal() {
            return head.animal();
        }
    }
}
