package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;
import org.scalepan.production.IpccTables.Where;
import org.scalepan.uncertainty.Distribution;

/**
 * Which row of the guidelines is used, where the tables are finer or coarser than the question. Every row is one
 * of the library; its table is named beside it.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class IpccTablesTest {
    /** Read for this class alone: look-ups that other tests left in the library's cache would be returned. */
    private final Library library = Libraries.readAgain();

    private IpccTables of2006() {
        return IpccTables.of(library, "2006");
    }

    private IpccTables of2019() {
        return IpccTables.of(library, "2019");
    }

    private static String id(IpccTables tables, String quantity, Where where) {
        return tables.find(quantity, where).map(row -> row.id()).orElse("none");
    }

    private static double cell(IpccTables tables, String quantity, Where where) {
        return tables.find(quantity, where).orElseThrow().printed().value().orElseThrow();
    }

    private static Where in(String category, String region) {
        return Where.of(category).in("ipcc." + region, "mean");
    }

    /** 2019, table 10.19, kg N per 1 000 kg and day in Africa: layers 1.20, broilers 1.40, all chickens 1.29. */
    @ParameterizedTest
    @CsvSource({"layers, 1.20", "broilers, 1.40", "chickens, 1.29"})
    void the_row_of_the_animal_itself_comes_before_that_of_its_category(String animals, double printed) {
        assertEquals(printed, cell(of2019(), "n-excretion-rate", in(animals, "africa")), 0.0);
    }

    /**
     * Layers are chickens, chickens are poultry, and poultry are animals: 2019, table 10.22, has their manure with litter under poultry
     * (0.40), table 10.21 under all animals (0.001).
     */
    @ParameterizedTest
    @CsvSource({
        "frac-gas-ms, layers, ipcc-2019.frac-gas-ms.poultry.poultry-manure-with-litter",
        "frac-gas-ms, ducks,  ipcc-2019.frac-gas-ms.poultry.poultry-manure-with-litter",
        "ef3,         layers, ipcc-2019.ef3.all-animals.poultry-manure-with-litter",
        "ef3,         poultry, ipcc-2019.ef3.all-animals.poultry-manure-with-litter"
    })
    void an_animal_without_a_row_uses_that_of_its_broader_category(String quantity, String animals, String expected) {
        Where litter = Where.of(animals).manure("mms.poultry-manure-with-litter", "any-climate");

        assertEquals(expected, id(of2019(), quantity, litter));
    }

    /** A row for layers is not used for all poultry: 2019, table 10.19, has no row for poultry. */
    @Test
    void the_row_of_one_animal_is_never_used_for_its_whole_category() {
        assertEquals("none", id(of2019(), "n-excretion-rate", in("poultry", "africa")));
        assertEquals("none", id(of2019(), "n-excretion-rate", in("swine", "other-regions")));
    }

    /** 2006, table 10A-6: buffalo weigh 380 kg, but 295 kg in the Indian Subcontinent. */
    @ParameterizedTest
    @CsvSource({"indian-subcontinent, 295", "asia, 380", "africa, 380", "all-regions, 380"})
    void the_row_of_the_region_comes_before_the_row_of_all_regions(String region, double printed) {
        assertEquals(printed, cell(of2006(), "typical-mass", in("buffalo", region)), 0.0);
    }

    /** 2006, table 10.11 (one row for Africa and the Middle East) and 2019, tables 10.16A (groups of regions). */
    @ParameterizedTest
    @CsvSource({
        "2006, enteric-ef, other-cattle, africa, ipcc-2006.enteric-ef.other-cattle.africa-and-middle-east",
        "2006, enteric-ef, other-cattle, middle-east, ipcc-2006.enteric-ef.other-cattle.africa-and-middle-east",
        "2006, bo, swine, latin-america, ipcc-2006.bo.swine.other-regions",
        "2019, bo, layers, oceania, ipcc-2019.bo.layers.north-america-europe-oceania",
        "2019, bo, ducks, indian-subcontinent, ipcc-2019.bo.ducks.low.other-regions"
    })
    void a_region_without_a_row_uses_that_of_the_regions_it_belongs_to(
            String edition, String quantity, String animals, String region, String expected) {
        assertEquals(expected, id(IpccTables.of(library, edition), quantity, in(animals, region)));
    }

    /** 2019, tables 10.10 (enteric) and 10.13A (volatile solids): by development or productivity, not by region. */
    @ParameterizedTest
    @CsvSource({
        "2006, enteric-ef, sheep, developed-countries,  8",
        "2006, enteric-ef, sheep, developing-countries, 5",
        "2019, vs-rate,    sheep, developed-countries,  8.2",
        "2019, vs-rate,    sheep, developing-countries, 8.3"
    })
    void where_a_table_distinguishes_development_only_the_group_decides(
            String edition, String quantity, String animals, String group, double printed) {
        Where asian = in(animals, "asia").developed(Optional.of("ipcc." + group));

        assertEquals(printed, cell(IpccTables.of(library, edition), quantity, asian), 0.0);
        assertEquals("none", id(IpccTables.of(library, edition), quantity, in(animals, "asia")), "group not known");
    }

    /** A row of the region, one of the group and one for all regions: invented rows beside 47 kg of 2006, table 10.11, for Asia. */
    @Test
    void the_region_comes_before_the_group_and_the_group_before_all_regions(@TempDir Path folder) {
        String asia = "ipcc-2006.enteric-ef.other-cattle.asia";
        Library own = new OwnFolder(folder)
                .rowLike(
                        "ipcc_livestock",
                        asia,
                        Map.of("id", "invented.all", "ipcc_region", "ipcc.all-regions", "value", "1"))
                .rowLike(
                        "ipcc_livestock",
                        asia,
                        Map.of("id", "invented.developed", "ipcc_region", "ipcc.developed-countries", "value", "2"))
                .library();
        IpccTables tables = IpccTables.of(own, "2006");
        Optional<String> developed = Optional.of("ipcc.developed-countries");

        assertEquals(47, cell(tables, "enteric-ef", in("other-cattle", "asia").developed(developed)), 0.0);
        assertEquals(
                2, cell(tables, "enteric-ef", in("other-cattle", "all-regions").developed(developed)), 0.0);
        assertEquals(1, cell(tables, "enteric-ef", in("other-cattle", "all-regions")), 0.0);
    }

    /** 128 kg of methane from a dairy cow of North America in 2006, 138 kg in 2019 (both table 10.11). */
    @Test
    void an_edition_answers_with_its_own_rows_only() {
        assertEquals(128, cell(of2006(), "enteric-ef", in("dairy-cattle", "north-america")), 0.0);
        assertEquals(138, cell(of2019(), "enteric-ef", in("dairy-cattle", "north-america")), 0.0);
        assertEquals("2006", of2006().edition());
        assertEquals("2019", of2019().edition());
    }

    /** Volatile solids are per head in 2006 (tables 10A-4 to 10A-9) and per 1 000 kg in 2019 (table 10.13A). */
    @Test
    void a_value_missing_in_one_edition_is_not_taken_from_the_other() {
        assertEquals("none", id(of2006(), "vs-rate", in("swine", "asia")));
        assertEquals("none", id(of2019(), "vs-per-head", in("buffalo", "asia")));
        assertEquals(
                "none", id(of2006(), "frac-leach-ms", Where.of("all-animals").manure("mms.dry-lot", "cool")));
    }

    @Test
    void an_unknown_quantity_or_animal_has_no_row() {
        assertEquals("none", id(of2019(), "weight-of-horns", in("dairy-cattle", "asia")));
        assertEquals("none", id(of2019(), "enteric-ef", in("crickets", "asia")));
    }

    /** 2019, table 10.13A, swine in Asia: 5.8, and 4.3 in another reading of the print, which is listed and not used. */
    @Test
    void a_row_shown_beside_the_default_is_never_used() {
        assertEquals(5.8, cell(of2019(), "vs-rate", in("swine", "asia")), 0.0);
        assertEquals(4.3, cell(of2019(), "vs-rate", in("swine", "middle-east")), 0.0);
        // Table 10.17 has pits of less than a month; while they are there, the row of all pits is used.
        Where pit = Where.of("swine").manure("mms.pit-under-1-month", "boreal-dry");
        assertEquals("ipcc-2019.mcf.all-animals.boreal-dry.pit-storage", id(of2019(), "mcf", pit));
    }

    /** 2019, table 10.10: swine give 1.5 kg of methane where productivity is high and 1 kg where it is low; no mean is printed. */
    @ParameterizedTest
    @CsvSource({
        "north-america, 1.5",
        "western-europe, 1.5",
        "eastern-europe, 1.5",
        "oceania, 1.5",
        "latin-america, 1.0",
        "africa, 1.0",
        "middle-east, 1.0",
        "asia, 1.0",
        "indian-subcontinent, 1.0"
    })
    void where_only_high_and_low_productivity_are_printed_the_region_decides(String region, double printed) {
        assertEquals(printed, cell(of2019(), "enteric-ef", in("swine", region)), 0.0);
    }

    /** 2019, table 10.10 for swine (no mean printed), table 10.16A for layers of other regions, table 10.11 for cows (means only). */
    @ParameterizedTest
    @CsvSource({
        "enteric-ef, swine, africa, high, 1.5",
        "enteric-ef, swine, western-europe, low, 1.0",
        "bo, layers, asia, high, 0.39",
        "bo, layers, asia, low, 0.24",
        "enteric-ef, dairy-cattle, africa, high, 76",
        "enteric-ef, dairy-cattle, africa, low, 76"
    })
    void a_productivity_asked_for_comes_before_the_mean(
            String quantity, String animals, String region, String productivity, double printed) {
        assertEquals(printed, cell(of2019(), quantity, Where.of(animals).in("ipcc." + region, productivity)), 0.0);
    }

    /** A mean of 60 invented beside the 5 kg of 2019, table 10.10, for goats of low productivity. */
    @Test
    void a_printed_mean_comes_before_the_productivity_of_the_region(@TempDir Path folder) {
        Library own = new OwnFolder(folder)
                .rowLike(
                        "ipcc_livestock",
                        "ipcc-2019.enteric-ef.goats.low",
                        Map.of("id", "invented.mean", "productivity", "mean", "value", "60"))
                .library();
        IpccTables tables = IpccTables.of(own, "2019");

        assertEquals(60, cell(tables, "enteric-ef", in("goats", "africa")), 0.0);
        assertEquals(5, cell(tables, "enteric-ef", Where.of("goats").in("ipcc.africa", "low")), 0.0);
    }

    /** 2019, table 10.22, dairy cows: solid storage loses 30 % of its nitrogen as gas, covered 14 %, with bulking agent 38 %. */
    @ParameterizedTest
    @CsvSource({
        "mms.solid-storage, 0.30",
        "mms.solid-storage-covered, 0.14",
        "mms.solid-storage-with-additives, 0.11",
        "mms.solid-storage-with-bulking-agent, 0.38"
    })
    void a_manure_system_with_a_row_of_its_own_uses_it(String system, double printed) {
        assertEquals(
                printed, cell(of2019(), "frac-gas-ms", Where.of("dairy-cattle").manure(system, "any-climate")), 0.0);
    }

    /** Table 10.21 knows one EF3 of solid storage, covered or not: 0.005 in 2006, 0.010 in 2019. */
    @ParameterizedTest
    @CsvSource({"2006, 0.005", "2019, 0.010"})
    void a_manure_system_without_a_row_uses_that_of_the_broader_one(String edition, double printed) {
        Where covered = Where.of("other-cattle").manure("mms.solid-storage-covered", "any-climate");

        assertEquals(printed, cell(IpccTables.of(library, edition), "ef3", covered), 0.0);
    }

    /** 2019: Bo 0.19 for all animals on pasture (note to table 10.17) before Bo 0.24 of western European dairy cows (10.16A). */
    @Test
    void the_system_comes_before_the_animal() {
        Where cow = in("dairy-cattle", "western-europe");

        assertEquals(0.19, cell(of2019(), "bo", cow.manure("mms.pasture", "any-climate")), 0.0);
        assertEquals(0.24, cell(of2019(), "bo", cow.manure("mms.dry-lot", "any-climate")), 0.0);
    }

    /** 2019, table 10.17: solid storage by warmth (2, 4 and 5 %), slurry by climate zone (37 and 41 %), pasture by none (0.47 %). */
    @ParameterizedTest
    @CsvSource({
        "mms.solid-storage, cool, 0.02",
        "mms.solid-storage, boreal-moist, 0.02",
        "mms.solid-storage, warm-temperate-dry, 0.04",
        "mms.solid-storage, tropical-wet, 0.05",
        "mms.liquid-slurry, warm-temperate-moist, 0.37",
        "mms.liquid-slurry, warm-temperate-dry, 0.41",
        "mms.pasture, tropical-wet, 0.0047"
    })
    void a_climate_zone_without_a_row_uses_that_of_its_temperature_class(
            String system, String climate, double printed) {
        assertEquals(printed, cell(of2019(), "mcf", Where.of("dairy-cattle").manure(system, climate)), 0.0);
    }

    /** Slurry in a temperate place may be 37 or 41 % in table 10.17 of 2019: the zone is not guessed. */
    @Test
    void a_row_of_one_zone_is_never_used_for_all_zones_as_warm() {
        assertEquals("none", id(of2019(), "mcf", Where.of("dairy-cattle").manure("mms.liquid-slurry", "temperate")));
        assertEquals("none", id(of2019(), "mcf", Where.of("dairy-cattle").manure("mms.solid-storage", "any-climate")));
    }

    /** 3 % for a tropical zone invented beside the 5 % that table 10.17 of 2019 prints for warm places. */
    @Test
    void the_zone_comes_before_its_temperature_class(@TempDir Path folder) {
        Library own = new OwnFolder(folder)
                .rowLike(
                        "ipcc_livestock",
                        "ipcc-2019.mcf.all-animals.warm.solid-storage",
                        Map.of("id", "invented.dry", "climate", "tropical-dry", "value", "0.03"))
                .library();
        Where storage = Where.of("goats").manure("mms.solid-storage", "tropical-dry");

        assertEquals(0.03, cell(IpccTables.of(own, "2019"), "mcf", storage), 0.0);
        assertEquals(0.05, cell(of2019(), "mcf", storage), 0.0);
    }

    /** 2019, table 10.12: Ym of cows by milk, 6.3 % between 5 000 and 8 500 kg a year, 6.5 % below. */
    @Test
    void a_condition_of_the_table_must_be_met_exactly() {
        Where cow = Where.of("dairy-cattle");

        assertEquals(0.063, cell(of2019(), "ym", cow.given("cond.milk-5000-to-8500")), 0.0);
        assertEquals(0.065, cell(of2019(), "ym", cow.given("cond.milk-under-5000")), 0.0);
        assertEquals("none", id(of2019(), "ym", cow), "2019 has no Ym without the milk");
        assertEquals(0.065, cell(of2006(), "ym", cow), 0.0, "2006 has one for all cattle");
        assertEquals("none", id(of2006(), "ym", cow.given("cond.milk-under-5000")));
    }

    /** 2019, table 10.22: daily spreading loses 7 % of the nitrogen, 5 to 60 %. */
    @Test
    void printed_limits_are_the_95_percent_interval_about_the_default() {
        Factor lost = of2019().factor(
                        of2019().find("frac-gas-ms", Where.of("swine").manure("mms.daily-spread", "any-climate"))
                                .orElseThrow());

        assertEquals("ipcc-2019.frac-gas-ms.all-animals.daily-spread", lost.id());
        assertEquals(Optional.of(lost.id()), lost.row());
        assertEquals(0.07, lost.central(), 1e-12);
        assertInterval(0.05, 0.60, lost);
        assertEquals(1, lost.reading().quantile(0.9999), 0.0, "no more is lost than there was");
    }

    private static void assertInterval(double low, double high, Factor factor) {
        assertEquals(low, factor.reading().quantile(0.025), 1e-4);
        assertEquals(high, factor.reading().quantile(0.975), 1e-4);
    }

    @Test
    void a_default_without_limits_is_that_number_and_no_other() {
        Distribution cow = of2019().factor(of2019().find("enteric-ef", in("dairy-cattle", "africa"))
                        .orElseThrow())
                .reading();

        assertEquals(76, cow.quantile(0.001), 0.0, "table 10.11 of 2019");
        assertEquals(76, cow.quantile(0.999), 0.0);
    }

    /** The guidelines: ±40 % (middle of 30 to 50) on Tier 1, ±20 % on Tier 2, ±50 % on nitrogen, half to twice on EF3. */
    @ParameterizedTest
    @CsvSource({
        "uncertainty-enteric-tier1, 2.333333",
        "uncertainty-enteric-tier2, 1.5",
        "uncertainty-n-excretion,   3",
        "uncertainty-bo,            1.352941",
        "uncertainty-ef3,           4"
    })
    void the_uncertainty_of_a_step_is_a_factor_about_one(String quantity, double upperOverLower) {
        Factor about = of2019().uncertainty(quantity, "this.row").orElseThrow();

        assertEquals(1, about.central(), 1e-9);
        assertEquals(
                upperOverLower,
                about.reading().quantile(0.975) / about.reading().quantile(0.025),
                1e-3);
    }

    @Test
    void the_uncertainty_of_one_row_is_drawn_apart_from_that_of_another() {
        Factor cows = of2019().uncertainty("uncertainty-n-excretion", "cows").orElseThrow();
        Factor hens = of2019().uncertainty("uncertainty-n-excretion", "hens").orElseThrow();

        assertEquals("ipcc-2019.uncertainty-n-excretion.all-animals/cows", cows.id());
        assertEquals("ipcc-2019.uncertainty-n-excretion.all-animals/hens", hens.id());
        assertEquals(Optional.of("ipcc-2019.uncertainty-n-excretion.all-animals"), cows.row());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "uncertainty-enteric-tier1",
                "uncertainty-enteric-tier2",
                "uncertainty-n-excretion",
                "uncertainty-bo",
                "uncertainty-ef3"
            })
    void an_inventory_after_2006_knows_no_uncertainty_of_2019(String quantity) {
        Factor about = of2006().uncertainty(quantity, "this.row").orElseThrow();

        assertEquals("ipcc-2006." + quantity + ".all-animals/this.row", about.id());
    }

    /** The 2019 Refinement restates the note to table 10.21, but not that to table 10.10. */
    @Test
    void an_uncertainty_that_2019_does_not_restate_is_that_of_2006() {
        assertEquals(
                Optional.of("ipcc-2006.uncertainty-enteric-tier1.all-animals"),
                of2019().uncertainty("uncertainty-enteric-tier1", "row")
                        .orElseThrow()
                        .row());
        assertEquals(
                Optional.of("ipcc-2019.uncertainty-ef3.all-animals"),
                of2019().uncertainty("uncertainty-ef3", "row").orElseThrow().row());
        assertEquals(
                Optional.of("ipcc-2006.uncertainty-ef3.all-animals"),
                of2006().uncertainty("uncertainty-ef3", "row").orElseThrow().row());
        assertEquals(Optional.empty(), of2019().uncertainty("uncertainty-of-the-weather", "row"));
    }

    /**
     * 2019, tables 11.1 and 11.3: the row for the input and the moisture; else the row for all inputs and that moisture; else the input in
     * any climate; else all inputs in any climate.
     */
    @ParameterizedTest
    @CsvSource({
        "ef1, organic,   tropical-wet,         ipcc-2019.ef1.organic.wet",
        "ef1, synthetic, cool-temperate-moist, ipcc-2019.ef1.synthetic.wet",
        "ef1, organic,   tropical-dry,         ipcc-2019.ef1.all.dry",
        "ef1, organic,   any-climate,          ipcc-2019.ef1.all",
        "ef1, organic,   warm,                 ipcc-2019.ef1.all",
        "ef3-prp, grazing-cattle-poultry-pigs, tropical-montane, ipcc-2019.ef3-prp.grazing-cattle-poultry-pigs.wet",
        "ef3-prp, grazing-cattle-poultry-pigs, boreal-dry, ipcc-2019.ef3-prp.grazing-cattle-poultry-pigs.dry",
        "ef3-prp, grazing-cattle-poultry-pigs, temperate, ipcc-2019.ef3-prp.grazing-cattle-poultry-pigs",
        "ef3-prp, grazing-sheep-and-other, tropical-wet, ipcc-2019.ef3-prp.grazing-sheep-and-other",
        "ef4, volatilised, boreal-moist,  ipcc-2019.ef4.volatilised.wet",
        "ef5, leached,     boreal-dry,    ipcc-2019.ef5.leached",
        "frac-leach, all,  tropical-dry,  ipcc-2019.frac-leach.all.dry",
        "frac-leach, all,  tropical-wet,  ipcc-2019.frac-leach.all.wet"
    })
    void factors_of_nitrogen_on_soils_depend_on_input_and_moisture(
            String quantity, String input, String climate, String expected) {
        assertEquals(expected, of2019().soil(quantity, input, climate).id());
    }

    /** 2019, table 11.3: FracLEACH 0.24 in wet climates and none in dry ones; there is no row for a climate that is not known. */
    @Test
    void leaching_is_counted_as_long_as_nothing_is_known_of_the_climate() {
        assertEquals(0.24, of2019().soil("frac-leach", "all", "any-climate").central(), 1e-12);
        assertEquals(0, of2019().soil("frac-leach", "all", "boreal-dry").central(), 0.0);
    }

    /** 2006, tables 11.1 and 11.3: by animal, but not by climate. */
    @ParameterizedTest
    @CsvSource({
        "ef1, organic, tropical-wet, 0.010, 0.003, 0.030",
        "ef3-prp, grazing-cattle-poultry-pigs, tropical-wet, 0.020, 0.007, 0.060",
        "ef3-prp, grazing-sheep-and-other, tropical-dry, 0.010, 0.003, 0.030",
        "ef5, leached, any-climate, 0.0075, 0.0005, 0.025"
    })
    void the_soils_of_2006_know_no_moisture(
            String quantity, String input, String climate, double printed, double low, double high) {
        Factor factor = of2006().soil(quantity, input, climate);

        assertTrue(factor.id().startsWith("ipcc-2006."), factor::id);
        assertEquals(printed, factor.central(), 1e-12);
        assertInterval(low, high, factor);
    }

    /** 2019, table 11.1 gives EF1 0.010 with limits 0.002 and 0.018; the other reading of the lower limit, 0.001, is listed beside it. */
    @Test
    void of_two_readings_of_a_soil_factor_the_default_is_used() {
        assertInterval(0.002, 0.018, of2019().soil("ef1", "organic", "any-climate"));
    }

    @Test
    void a_soil_factor_that_no_table_has_is_refused_by_name() {
        IllegalStateException refusal =
                assertThrows(IllegalStateException.class, () -> of2019().soil("ef9", "organic", "warm"));

        assertEquals("no ef9 for organic in the library", refusal.getMessage());
    }

    /** Regions of the tables (from memory): a country by the nearest region around it that the tables name. */
    @ParameterizedTest
    @CsvSource({
        "kenya, ipcc.africa",
        "ghana, ipcc.africa",
        "brazil, ipcc.latin-america",
        "japan, ipcc.asia",
        "india, ipcc.indian-subcontinent",
        "france, ipcc.western-europe",
        "denmark, ipcc.western-europe",
        // The tables' own statement about a country comes before that about the region around it.
        "latvia, ipcc.eastern-europe",
        "lithuania, ipcc.eastern-europe",
        "turkiye, ipcc.middle-east",
        "iran, ipcc.middle-east"
    })
    void a_country_belongs_to_the_nearest_region_that_the_tables_name(String country, String region) {
        assertEquals(Optional.of(region), of2019().regionOf(country));
        assertEquals(Optional.of(region), of2006().regionOf(country));
    }

    @ParameterizedTest
    @CsvSource({
        "japan, ipcc.developed-countries",
        "israel, ipcc.developed-countries",
        "france, ipcc.developed-countries",
        "india, ipcc.developing-countries",
        "kenya, ipcc.developing-countries",
        "brazil, ipcc.developing-countries"
    })
    void a_country_is_developed_or_developing_whatever_its_region(String country, String group) {
        assertEquals(Optional.of(group), of2019().developmentOf(country));
    }

    @ParameterizedTest
    @ValueSource(strings = {"world", "atlantis"})
    void a_place_that_no_table_names_belongs_nowhere(String place) {
        assertEquals(Optional.empty(), of2019().regionOf(place));
        assertEquals(Optional.empty(), of2019().developmentOf(place));
    }

    @ParameterizedTest
    @CsvSource({
        "ipcc.western-europe, ipcc.developed-countries",
        "ipcc.oceania, ipcc.developed-countries",
        "ipcc.asia, ipcc.developing-countries",
        "ipcc.africa, ipcc.developing-countries"
    })
    void a_region_of_the_tables_counts_as_developed_where_productivity_is_high(String region, String group) {
        assertEquals(Optional.of(group), IpccTables.developmentOfRegion(region));
    }
}
