package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.herd.Herd.AnimalKind;
import org.scalepan.production.insects.InsectFarm.Fate;
import org.scalepan.uncertainty.Summary;

/** What holds for any farm's records. */
class RecordsPropertyTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final List<String> INDICATORS = List.of("ghg", "land", "feed", "energy", "water");
    private static final List<String> SPECIES =
            List.of("mealworm", "palm-weevil", "house-cricket", "black-soldier-fly", "superworm");
    private static final List<String> PLACES = List.of("peru", "kenya", "thailand", "netherlands", "portugal");
    private static final List<String> FEEDS = List.of("wheat-bran", "maize", "carrot", "soybean-meal", "oats");

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(40);
    }

    /** A farm that is the same for the same seed, its amounts times a factor and its feed times another one on top. */
    private static Inventory farm(long seed, double times, double moreFeed) {
        SplittableRandom random = new SplittableRandom(seed);
        InsectRecordsFixture notebook = InsectRecordsFixture.of(
                        LIBRARY, pick(random, SPECIES), times * between(random, 10, 5000))
                .in(pick(random, PLACES))
                .feed(pick(random, FEEDS), moreFeed * times * between(random, 5, 20_000))
                .feed(Fed.of(pick(random, FEEDS), moreFeed * times * between(random, 1, 9000))
                        .moisture(between(random, 0.05, 0.6)))
                .energy("grid-electricity", times * between(random, 0, 5000))
                .energy("diesel", times * between(random, 0, 300))
                .energy("firewood", times * between(random, 0, 300))
                .water(times * between(random, 0, 300))
                .transport("van-diesel", times * between(random, 0, 300))
                .material("plastic-pp", times * between(random, 0, 300), between(random, 0.5, 9))
                .area(times * between(random, 1, 100), times * between(random, 0, 100))
                .mortality(between(random, 0, 0.6));
        if (random.nextBoolean()) {
            notebook.frass(Fate.SPREAD);
        }
        return notebook.inventory();
    }

    private static String pick(SplittableRandom random, List<String> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double figure(Inventory inventory, String indicator) {
        return Tally.of(LIBRARY, inventory).indicator(indicator).value();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void twice_the_farm_has_the_same_footprint_per_kg(long seed) {
        Inventory once = farm(seed, 1, 1);
        Inventory twice = farm(seed, 2, 1);

        for (String indicator : INDICATORS) {
            double figure = figure(once, indicator);
            assertEquals(figure, figure(twice, indicator), 1e-12 * Math.abs(figure), indicator);
        }
        assertEquals(Tally.gaps(once), Tally.gaps(twice));
        assertEquals(
                2 * once.output().amount(),
                twice.output().amount(),
                1e-9 * once.output().amount());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void more_feed_for_the_same_harvest_never_lowers_anything(long seed) {
        Inventory sparing = farm(seed, 1, 1);
        Inventory lavish = farm(seed, 1, 1.3);

        for (String indicator : INDICATORS) {
            assertTrue(figure(lavish, indicator) >= figure(sparing, indicator), indicator);
        }
        assertTrue(figure(lavish, "ghg") > figure(sparing, "ghg"));
    }

    /** Peel of which the library knows neither nitrogen nor footprint must not take away what is known of the bran. */
    @ParameterizedTest
    @ValueSource(strings = {"cassava-peel", "palm-pith", "compound-poultry-feed", "maize", "market-waste"})
    void one_more_ingredient_never_lowers_the_greenhouse_gases(String ingredient) {
        InsectRecordsFixture bran =
                InsectRecordsFixture.of(LIBRARY, "palm-weevil", 500).feed("wheat-bran", 2000);
        double without = figure(bran.inventory(), "ghg");

        assertTrue(figure(bran.feed(ingredient, 800).inventory(), "ghg") >= without, ingredient);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e-3, 1, 1e6, 1e12})
    void every_draw_of_the_smallest_and_the_largest_farm_is_finite(double kilograms) {
        Inventory larvae = InsectRecordsFixture.of(LIBRARY, "palm-weevil", kilograms)
                .feed("wheat-bran", 4 * kilograms)
                .energy("grid-electricity", kilograms)
                .energy("charcoal", kilograms)
                .inventory();
        Inventory hens = HerdRecordsFixture.of(LIBRARY, "layers", kilograms)
                .in("peru")
                .gives(AnimalKind.EGGS, 4 * kilograms)
                .inventory();

        for (Inventory inventory : List.of(larvae, hens)) {
            SystemFootprint system =
                    Tally.of(LIBRARY, inventory).per(FunctionalUnit.KG_PROTEIN).system();
            // A summary refuses draws that are not finite.
            Summary summary =
                    system.footprint(new CommonRandomNumbers(1, 2_000)).summary(0.9);
            assertTrue(summary.low() > 0 && summary.low() < summary.median(), summary::toString);
            assertTrue(summary.median() < summary.high() && summary.high() < 1e6, summary::toString);
        }
    }

    /** A farm of a billionth of a gram beside one of a billion tonnes: fluxes of any ratio must not affect one another. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e12})
    void records_out_of_all_proportion_still_give_a_number(double feed) {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 1 / feed)
                .feed("wheat-bran", feed)
                .inventory();
        Summary summary = Tally.of(LIBRARY, inventory)
                .system()
                .footprint(new CommonRandomNumbers(1, 1_000))
                .summary(0.9);

        assertTrue(summary.low() <= summary.median() && summary.median() <= summary.high(), summary::toString);
    }
}
