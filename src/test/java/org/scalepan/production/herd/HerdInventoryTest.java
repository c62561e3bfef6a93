package org.scalepan.production.herd;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.HerdRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.Tally;
import org.scalepan.production.herd.Herd.AnimalKind;
import org.scalepan.uncertainty.Summary;

/** From the records of a herd to the lines of its inventory. */
class HerdInventoryTest {
    private static final Library LIBRARY = Libraries.bundled();
    /** kg N2O per kg N2O-N. */
    private static final double TO_N2O = 44.0 / 28.0;

    private static HerdRecordsFixture herd(String animals, double heads) {
        return HerdRecordsFixture.of(LIBRARY, animals, heads);
    }

    private static HerdRecordsFixture cows(double heads) {
        return herd("dairy-cattle", heads).gives(AnimalKind.MILK, 6000 * heads);
    }

    private static EnergyNeed.Animal cow(
            double weight, double milk, double fat, double pregnant, double digestibility) {
        return new EnergyNeed.Animal(weight, weight, 0, milk, fat, pregnant, 0, digestibility);
    }

    /** IPCC 2019, table 10.11, dairy cattle, kg CH4 per head and year. */
    @ParameterizedTest
    @CsvSource({
        "ipcc.north-america, 138",
        "ipcc.western-europe, 126",
        "ipcc.eastern-europe, 93",
        "ipcc.oceania, 93",
        "ipcc.latin-america, 87",
        "ipcc.africa, 76",
        "ipcc.middle-east, 76",
        "ipcc.asia, 78",
        "ipcc.indian-subcontinent, 73"
    })
    void without_further_records_enteric_methane_is_the_table_times_the_heads(String region, double printed) {
        Inventory inventory = cows(12).ipcc(region).inventory();

        assertEquals(12 * printed, Tally.yearly(inventory, "enteric methane, Tier 1", Flux.CH4_BIOGENIC), 1e-9);
    }

    /** IPCC 2006, volume 4, table 10.11: 128 kg in North America; of 2019: 138. */
    @Test
    void the_edition_asked_for_is_the_edition_used() {
        Inventory old = cows(1).edition("2006").ipcc("ipcc.north-america").inventory();

        assertEquals(128, Tally.yearly(old, "enteric methane, Tier 1", Flux.CH4_BIOGENIC), 1e-9);
    }

    /** IPCC 2019, table 10.11, 126 kg; table 10.12 gives Ym 6.3 % for 5 000 to 8 500 kg of milk a year. */
    @Test
    void given_the_animal_the_herd_meets_table_10_11_through_the_whole_chain() {
        Inventory inventory = cows(10).ipcc("ipcc.western-europe")
                .tier2(cow(600, 20.3, 4.2, 0.90, 71), "stall")
                .inventory();

        assertEquals(1258.7, Tally.yearly(inventory, "enteric methane, Tier 2", Flux.CH4_BIOGENIC), 0.05);
        assertEquals(
                16.511 * 365 * 10, Tally.yearly(inventory, "feed by energy need", Flux.FEED_DRY_MATTER), 0.0005 * 3650);
        assertTrue(Tally.gaps(inventory).contains("methane_conversion_percent"), inventory::toString);
    }

    /** IPCC 2006, table 10.11: 128 in North America, 72 in Latin America, where cows walk on pasture. */
    @ParameterizedTest
    @CsvSource({
        "ipcc.north-america, 600, 23.0, 0.90, 75, stall, 128",
        "ipcc.latin-america, 400, 2.2, 0.80, 60, pasture-fed, 72"
    })
    void the_same_under_2006(
            String region,
            double weight,
            double milk,
            double pregnant,
            double digestibility,
            String activity,
            double printed) {
        Inventory inventory = cows(1).edition("2006")
                .ipcc(region)
                .tier2(cow(weight, milk, 4, pregnant, digestibility), activity)
                .inventory();

        assertEquals(printed, Tally.yearly(inventory, "enteric methane, Tier 2", Flux.CH4_BIOGENIC), 0.5);
    }

    /** The guidelines: half the 95 % interval of an enteric factor is 20 % with Tier 2 (2006, volume 4, 10.3.4). */
    @Test
    void the_uncertainty_of_the_guidelines_is_on_the_line() {
        Inventory inventory = cows(1).ipcc("ipcc.western-europe")
                .tier2(cow(600, 20.3, 4.2, 0.90, 71), "stall")
                .inventory();
        double[] draws = drawn(inventory, "enteric methane, Tier 2");
        Summary summary = Summary.of(draws, 0.95);

        // A lognormal with these limits is as wide as 1.2 over 0.8.
        assertEquals(1.2 / 0.8, summary.high() / summary.low(), 0.02);
    }

    /** The guidelines give EF3 of stored manure a factor of two either way (2006, volume 4, 10.5.5). */
    @Test
    void direct_nitrous_oxide_of_a_store_is_known_within_a_factor_of_two() {
        Inventory inventory = herd("layers", 10)
                .ipcc("ipcc.africa")
                .gives(AnimalKind.EGGS, 40)
                .manure("mms.poultry-manure-with-litter", 1)
                .inventory();
        Flow stored = line(inventory, "manure, poultry-manure-with-litter, stored");
        double lnSd = Math.sqrt(stored.term().uses().stream()
                .flatMap(use -> use.factor().behind())
                .mapToDouble(factor -> Math.pow(factor.lnSd(), 2))
                .sum());
        // n-excretion +/- 50 %: ln(1.5/0.5)/3.92 = 0.28026; EF3 0.5 to 2: ln(4)/3.92 = 0.35365; together 0.45124
        assertEquals(0.45124, lnSd, 0.0005);
    }

    /**
     * Ten cows of Western Europe, all manure in solid storage in a cool climate, by hand from the tables of 2019: VS 8.4 (10.13A), mass
     * 600 kg, Bo 0.24, MCF 2 %; N 0.54 per 1 000 kg and day, EF3 0.01, volatilised 30 % of it at EF4 0.01, leached 2 % at EF5 0.011.
     */
    @Test
    void manure_by_hand() {
        Inventory inventory = cows(10).ipcc("ipcc.western-europe")
                .climate("cool")
                .manure("mms.solid-storage", 1)
                .inventory();
        double solids = 8.4 * 600 / 1000 * 365 * 10;
        double nitrogen = 0.54 * 600 / 1000 * 365 * 10;

        assertEquals(
                solids * 0.24 * 0.02 * 0.67,
                Tally.yearly(inventory, "methane of manure, solid-storage", Flux.CH4_BIOGENIC),
                1e-6);
        assertEquals(
                nitrogen * 0.01 * TO_N2O, Tally.yearly(inventory, "manure, solid-storage, stored", Flux.N2O), 1e-6);
        assertEquals(
                nitrogen * 0.30 * 0.01 * TO_N2O,
                Tally.yearly(inventory, "manure, solid-storage, volatilised", Flux.N2O),
                1e-6);
        assertEquals(
                nitrogen * 0.02 * 0.011 * TO_N2O,
                Tally.yearly(inventory, "manure, solid-storage, leached", Flux.N2O),
                1e-6,
                "the default printed, though its limits, 0 and 0.02, are uneven");
    }

    @Test
    void manure_divided_between_systems_adds_up() {
        Inventory whole =
                cows(4).ipcc("ipcc.asia").manure("mms.solid-storage", 1).inventory();
        Inventory divided = cows(4).ipcc("ipcc.asia")
                .manure("mms.solid-storage", 0.25)
                .manure("mms.solid-storage", 0.75)
                .inventory();

        assertEquals(Tally.yearly(whole, Flux.N2O), Tally.yearly(divided, Flux.N2O), 1e-12);
        assertEquals(Tally.yearly(whole, Flux.CH4_BIOGENIC), Tally.yearly(divided, Flux.CH4_BIOGENIC), 1e-9);
    }

    /**
     * IPCC 2019, tables 11.1 and 11.3, as the library holds them: EF3 of grazing cattle, EF4 and the leaching of a climate that is not
     * known, a wet one and a dry one; FracGASM 0.21, FracLEACH 0.24, EF5 0.011.
     */
    @ParameterizedTest
    @CsvSource({
        "'', 0.004, 0.010, 0.24",
        "tropical-wet, 0.006, 0.014, 0.24",
        "tropical-montane, 0.006, 0.014, 0.24",
        "warm-temperate-dry, 0.002, 0.005, 0",
        "warm, 0.004, 0.010, 0.24"
    })
    void grazing_cattle_drop_the_nitrous_oxide_of_the_tables_for_their_climate(
            String climate, double dropped, double volatilised, double leached) {
        HerdRecordsFixture notebook = cows(1).ipcc("ipcc.africa").manure("mms.pasture", 1);
        Inventory inventory = (climate.isEmpty() ? notebook : notebook.climate(climate)).inventory();
        double nitrogen = 0.44 * 260 / 1000 * 365;

        assertEquals(nitrogen * dropped * TO_N2O, Tally.yearly(inventory, "manure, pasture, dropped", Flux.N2O), 1e-9);
        assertEquals(
                nitrogen * 0.21 * volatilised * TO_N2O,
                Tally.yearly(inventory, "manure, pasture, volatilised", Flux.N2O),
                1e-9);
        assertEquals(
                nitrogen * leached * 0.011 * TO_N2O,
                Tally.yearly(inventory, "manure, pasture, leached", Flux.N2O),
                1e-9);
    }

    /** Table 11.1 prints 0 to 0.014 about 0.004 as the 95 % interval of grazing where the climate is not known. */
    @Test
    void the_limits_of_the_table_are_the_interval_of_the_draws() {
        Inventory inventory =
                cows(1).ipcc("ipcc.africa").manure("mms.pasture", 1).inventory();
        double perFactor = Tally.yearly(inventory, "manure, pasture, dropped", Flux.N2O) / 0.004;
        double[] drawn = drawn(inventory, "manure, pasture, dropped");

        double high = Summary.of(drawn, 0.95).high() / perFactor;
        // The excretion of nitrogen has an uncertainty of its own, ±50 %, on top.
        assertTrue(high > 0.014 && high < 0.014 * 1.25, "0.014 and somewhat more, not " + high);
        assertTrue(Summary.of(drawn, 0.95).low() < 0.0005 * perFactor);
    }

    /** Table 11.3 of both editions: no leaching in a dry climate without irrigation. */
    @Test
    void nothing_leaches_in_a_dry_climate() {
        Inventory wet = cows(1).ipcc("ipcc.africa").climate("tropical-wet").inventory();
        Inventory dry = cows(1).ipcc("ipcc.africa").climate("tropical-dry").inventory();

        assertTrue(Tally.yearly(wet, "manure, pasture, leached", Flux.N2O) > 0);
        assertEquals(0, Tally.yearly(dry, "manure, pasture, leached", Flux.N2O), 0.0);
    }

    /**
     * Ten hens of an African village from the tables of 2019: 1.4 kg each, VS 10.2 and N 1.2 per 1 000 kg and day, Bo 0.24 for low
     * productivity, litter MCF 1.5 % and EF3 0.001.
     */
    @Test
    void ten_hens_with_nothing_but_their_eggs_are_enough() {
        Inventory inventory =
                herd("layers", 10).in("ghana").gives(AnimalKind.EGGS, 40).inventory();

        assertEquals(
                10.2 * 1.4 / 1000 * 365 * 10 * 0.24 * 0.015 * 0.67,
                Tally.yearly(inventory, "methane of manure, poultry-manure-with-litter", Flux.CH4_BIOGENIC),
                1e-9);
        assertEquals(
                1.2 * 1.4 / 1000 * 365 * 10 * 0.001 * TO_N2O,
                Tally.yearly(inventory, "manure, poultry-manure-with-litter, stored", Flux.N2O),
                1e-9);
        assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.ANIMALS), 0.0);
        assertEquals(
                List.of("the guidelines give no enteric methane for poultry: none is counted"),
                Tally.remarks(inventory, Remark.METHOD));
        assertEquals(
                List.of(
                        "ipcc_region",
                        "feed",
                        "energy",
                        "water_m3",
                        "building_m2, yard_m2",
                        "transport",
                        "materials",
                        "manure",
                        "climate",
                        "yield/live_kg"),
                Tally.gaps(inventory));
    }

    @Test
    void a_herd_without_a_region_uses_africa_and_reports_it() {
        Inventory inventory = cows(1).inventory();

        assertTrue(Tally.gaps(inventory).contains("ipcc_region"));
        assertEquals(76, Tally.yearly(inventory, "enteric methane, Tier 1", Flux.CH4_BIOGENIC), 1e-9);
    }

    /**
     * By hand from the library's composition: 6 000 kg milk x 3.15 % at N x 6.38 = 185.149 kg protein at N x 6.25; 200 kg live x 0.59967
     * dressed (the middle of 58 to 62 %) x 0.81 without bone x 17.32 % = 16.826 kg; so milk carries 185.149 / 201.975 = 91.669 %.
     */
    @Test
    void the_burden_of_milk_and_meat_is_allocated_by_protein() {
        HerdRecordsFixture both = herd("dairy-cattle", 1)
                .ipcc("ipcc.western-europe")
                .gives(AnimalKind.MILK, 6000)
                .gives(AnimalKind.LIVE, 200);
        Inventory milk = both.inventory();
        Inventory beef = both.asked("beef").inventory();

        assertEquals("milk", milk.output().product().id());
        assertEquals(0.91669, milk.output().share(), 0.00005);
        assertEquals("protein", milk.output().allocation());
        assertEquals("beef", beef.output().product().id());
        assertEquals(1, milk.output().share() + beef.output().share(), 1e-12);
        assertTrue(Tally.gaps(milk).contains("allocation"));
        // By protein the two are then equal per kg protein, which is what the rule is for.
        assertEquals(
                Tally.of(LIBRARY, milk).per(FunctionalUnit.KG_PROTEIN).value(),
                Tally.of(LIBRARY, beef).per(FunctionalUnit.KG_PROTEIN).value(),
                1e-9);
    }

    /** Goats' milk is goats' milk; of sheep's milk the library knows nothing, and cow's milk is no substitute for it. */
    @Test
    void milk_is_the_milk_of_the_animal() {
        assertEquals(
                "goat-milk",
                herd("goats", 5)
                        .in("kenya")
                        .gives(AnimalKind.MILK, 500)
                        .inventory()
                        .output()
                        .product()
                        .id());
        HerdRecordsFixture sheep = herd("sheep", 5).in("kenya").gives(AnimalKind.MILK, 500);
        assertThrows(IllegalArgumentException.class, sheep::inventory);
        HerdRecordsFixture pigs = herd("swine", 5).in("kenya").gives(AnimalKind.EGGS, 5);
        assertThrows(IllegalArgumentException.class, pigs::inventory);
    }

    /** Every animal in every region and edition gives figures above zero, and each of its lines says which rows it rests on. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "dairy-cattle",
                "other-cattle",
                "buffalo",
                "sheep",
                "goats",
                "swine",
                "layers",
                "broilers",
                "ducks"
            })
    void every_line_of_every_herd_rests_on_rows_of_its_own_edition(String animals) {
        for (String edition : List.of("2006", "2019")) {
            int counted = 0;
            for (String region : regions()) {
                HerdRecordsFixture herd =
                        herd(animals, 3).edition(edition).ipcc(region).gives(AnimalKind.LIVE, 100);
                Inventory inventory = herd.inventory();
                Editions.assertUnmixed(inventory, edition, animals + " in " + region);
                counted += inventory.flows().isEmpty() ? 0 : 1;
            }
            assertTrue(counted >= 4, animals + " of " + edition + " in " + counted + " regions");
        }
    }

    /** IPCC 2006, table 10.10: sheep 8 kg in developed and 5 kg in developing countries; Japan is developed, in Asia. */
    @ParameterizedTest
    @CsvSource({"france, 8", "japan, 8", "kenya, 5", "viet-nam, 5"})
    void where_the_table_distinguishes_development_the_country_decides(String country, double printed) {
        Inventory inventory = herd("sheep", 1)
                .edition("2006")
                .in(country)
                .gives(AnimalKind.LIVE, 20)
                .inventory();

        assertEquals(printed, Tally.yearly(inventory, "enteric methane, Tier 1", Flux.CH4_BIOGENIC), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dairy-cattle", "other-cattle", "buffalo"})
    void tier_2_has_figures_in_every_kind_and_activity(String animals) {
        for (String edition : List.of("2006", "2019")) {
            for (String kind : List.of("lactating", "not-lactating", "intact-males", "castrates")) {
                for (String activity : List.of("stall", "pasture-fed", "large-areas")) {
                    double milk = kind.equals("lactating") ? 10 : 0;
                    Inventory inventory = herd(animals, 3)
                            .edition(edition)
                            .ipcc("ipcc.asia")
                            .gives(AnimalKind.LIVE, 100)
                            .tier2(
                                    new EnergyNeed.Animal(400, 600, 0.3, milk, 4, 0.5, 1, 60),
                                    activity,
                                    kind,
                                    RecordedNumber.known(14))
                            .inventory();
                    Editions.assertUnmixed(inventory, edition, animals + ", " + kind + ", " + activity);
                    Flow enteric = line(inventory, "enteric methane, Tier 2");
                    assertTrue(enteric.rows().stream().anyMatch(row -> row.contains(".ym.")), enteric::toString);
                }
            }
        }
    }

    /** The regions of the tables that a country belongs to. */
    private static List<String> regions() {
        return LIBRARY.table("ipcc_regions").rows().stream()
                .filter(row -> row.text("scheme").equals("geographic"))
                .map(row -> row.text("ipcc_region"))
                .distinct()
                .toList();
    }

    private static Flow line(Inventory inventory, String what) {
        List<Flow> lines = inventory.flows().stream()
                .filter(flow -> flow.what().equals(what))
                .toList();
        assertFalse(lines.isEmpty(), () -> "no line " + what + " among " + inventory.flows());
        return lines.get(0);
    }

    private static double[] drawn(Inventory inventory, String what) {
        double[] draws = new double[50_001];
        line(inventory, what).term().addTo(draws, 1, new CommonRandomNumbers(1, draws.length));
        return draws;
    }

    /** 20 kg a day × 10 cows × 365 days are 73 000 kg of milk. */
    @ParameterizedTest
    @CsvSource({
        "73000, ''",
        "60000, ''",
        "36500, ''",
        "36499, unusual-practice",
        "20000, unusual-practice",
        "76650, ''",
        "76651, against-physics",
        "90000, against-physics"
    })
    void milk_sold_and_milk_given_are_compared(double sold, String remark) {
        Inventory inventory = herd("dairy-cattle", 10)
                .ipcc("ipcc.western-europe")
                .gives(AnimalKind.MILK, sold)
                .tier2(cow(600, 20, 4, 0.9, 70), "stall")
                .inventory();

        List<String> codes = inventory.remarks().stream()
                .filter(found -> found.text().contains("yield.milk_kg"))
                .map(Remark::code)
                .toList();
        assertEquals(remark.isEmpty() ? List.of() : List.of(remark), codes);
    }

    @Test
    void only_milk_given_is_compared_with_milk_sold() {
        HerdRecordsFixture meat = herd("dairy-cattle", 10)
                .ipcc("ipcc.western-europe")
                .gives(AnimalKind.LIVE, 100_000)
                .tier2(cow(600, 20, 4, 0.9, 70), "stall");
        assertEquals(List.of(), meat.inventory().remarks(), "none is sold, the calves drink it");

        assertEquals(List.of(), meat.gives(AnimalKind.MILK, 73_000).inventory().remarks());
    }
}
