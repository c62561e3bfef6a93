package org.scalepan.production.fish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.input.Input;
import org.scalepan.production.FarmBalance.BalanceKind;
import org.scalepan.production.FarmBalance.BalanceVerdict;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.Remark;
import org.scalepan.production.records.SystemReading;

/** What a fish farm's water gives off, what it covers, and what its records leave open. All farms are invented. */
class FishInventoryTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static final String POND = ", \"pond\": {\"kind\": \"pond\", \"area_m2\": 1200}";
    private static final String STOCKED = ", \"stocked\": {\"kg\": 40}";
    private static final String FED = ", \"feed\": [{\"ingredient\": \"maize\", \"kg\": 1260}]";

    private static Inventory farm(String rest) {
        return farm("{\"kg_per_year\": 900}", rest);
    }

    private static Inventory farm(String harvest, String rest) {
        Input body = body(
                "{\"kind\": \"fish\", \"product\": \"tilapia\", \"energy\": [], \"harvest\": " + harvest + rest + "}");
        Optional<Inventory> read = new SystemReading(LIBRARY).read(body);
        assertEquals(List.of(), body.faults());
        return read.orElseThrow();
    }

    private static Input body(String text) {
        try {
            return Input.body(new JsonMapper().readTree(text));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static Flow flow(Inventory inventory, Flux flux) {
        List<Flow> found =
                inventory.flows().stream().filter(flow -> flow.flux() == flux).toList();
        assertEquals(1, found.size(), found::toString);
        return found.get(0);
    }

    private static Optional<Gap> gap(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .findFirst();
    }

    private static Set<String> notCounted(Inventory inventory) {
        return inventory.gaps().stream()
                .filter(gap -> gap.kind() == Gap.Kind.NOT_COUNTED)
                .map(Gap::field)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * The equation of the guidelines for constructed waters is area x factor (2019 Refinement, volume 4, chapter 7; from memory): 1200 m2 =
     * 0.12 ha, with 31.5 to 609 kg CH4/(ha yr) of the default rows of pond_factors.csv 3.78 to 73.1 kg CH4 a year, and in the middle of
     * the logarithms 0.12 x sqrt(31.5 x 609) = 16.62. The guidelines' own factor, 183 (from memory), gives 21.96, which lies between.
     */
    @Test
    void given_1200_m2_of_pond_then_methane_is_area_times_what_was_measured_per_hectare() {
        Flow methane = flow(farm(POND), Flux.CH4_BIOGENIC);

        assertEquals(16.62, methane.term().central(), 0.01);
        double[] drawn = new double[2000];
        methane.term().addTo(drawn, 1, new CommonRandomNumbers(1, drawn.length));
        for (double kilograms : drawn) {
            assertTrue(kilograms >= 3.77 && kilograms <= 73.1, () -> kilograms + " kg CH4");
        }
        assertTrue(methane.rows().contains("liu-2016.freshwater-pond.ch4"), methane.rows()::toString);
    }

    /**
     * 900 kg of fish x 0.216 to 1.64 g N2O-N per kg (rows n2o-n of pond_factors.csv), in the middle of the logarithms sqrt(0.216 x 1.64) =
     * 0.5952 g; x 44/28 kg N2O per kg N2O-N = 0.8418 kg N2O a year.
     */
    @Test
    void given_900_kg_of_fish_then_nitrous_oxide_follows_the_harvest() {
        assertEquals(0.8418, flow(farm(POND), Flux.N2O).term().central(), 0.0005);
    }

    @Test
    void given_the_area_of_water_then_it_is_land_beside_that_of_buildings_and_yard() {
        assertEquals(1200, flow(farm(POND), Flux.LAND).term().central());
        assertTrue(notCounted(farm(POND)).contains("building_m2, yard_m2"), "a farm without a shed says building_m2 0");
        assertTrue(!notCounted(farm(POND + ", \"building_m2\": 0")).contains("building_m2, yard_m2"));
    }

    @Test
    void given_a_pond_without_its_area_then_greenhouse_gases_and_land_are_lower_bounds() {
        Inventory inventory = farm(FED + STOCKED);

        assertEquals(Optional.of(List.of("ghg")), gap(inventory, "pond/methane").map(Gap::indicators));
        assertEquals(
                Optional.of(List.of("land")), gap(inventory, "pond/area_m2").map(Gap::indicators));
        assertTrue(
                notCounted(inventory).containsAll(Set.of("pond/methane", "pond/area_m2")),
                notCounted(inventory)::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"brackish-pond", "lined-pond", "tank", "cage"})
    void given_water_of_which_no_methane_was_measured_then_the_figure_is_a_lower_bound(String kind) {
        Inventory inventory = farm(", \"pond\": {\"kind\": \"" + kind + "\", \"area_m2\": 1200}");

        assertTrue(notCounted(inventory).contains("pond/methane"), kind);
        assertTrue(inventory.flows().stream().noneMatch(flow -> flow.flux() == Flux.CH4_BIOGENIC), kind);
    }

    @Test
    void given_a_cage_then_no_ground_is_counted() {
        Inventory inventory = farm(", \"pond\": {\"kind\": \"cage\", \"area_m2\": 1200}, \"building_m2\": 10");

        assertEquals(10, flow(inventory, Flux.LAND).term().central());
    }

    @ParameterizedTest(name = "stocked {0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | not-counted",
                "', \"stocked\": {\"kg\": 40}' | cut-off",
                "', \"stocked\": {\"fish\": 2000, \"grams_per_fish\": 20}' | cut-off",
                "', \"stocked\": {\"kg\": 0}' |"
            })
    void what_was_put_in_is_a_bound_where_it_is_not_said_and_its_hatchery_is_cut_off(String stocked, String kind) {
        Optional<Gap> found = gap(farm(POND + stocked), "stocked");

        assertEquals(Optional.ofNullable(kind), found.map(gap -> gap.kind().id()));
        found.ifPresent(gap -> assertEquals(Gap.ALL, gap.indicators()));
    }

    /** 5 kg N x 4.5719 kg CO2e per kg N (jrc-2019-biofuels, average of the market) = 22.86 kg CO2e. */
    @Test
    void given_fertiliser_then_its_making_counts_and_lime_without_a_factor_makes_a_bound() {
        Inventory inventory =
                farm(", \"pond\": {\"area_m2\": 1200, \"fertiliser_n_kg\": 5, \"lime_kg\": 30, \"manure_kg\": 100}");

        assertEquals(22.86, flow(inventory, Flux.CO2E).term().central(), 0.01);
        assertTrue(notCounted(inventory).contains("pond/lime_kg"));
        assertTrue(
                inventory.remarks().stream().anyMatch(remark -> remark.code().equals(Remark.METHOD)),
                "manure is counted burden-free, and said to be");
    }

    @Test
    void fish_that_are_counted_are_fish_that_are_weighed() {
        Inventory counted = farm("{\"fish\": 2000, \"grams_per_fish\": 450}", POND + STOCKED + FED);
        Inventory weighed = farm(POND + STOCKED + FED);

        assertEquals(weighed.output().amount(), counted.output().amount(), 1e-9);
        assertEquals(weighed.gaps(), counted.gaps());
    }

    /** 20 kg maize hold 0.3 kg N or so; the edible part of 860 kg that grew holds 860 x 0.37 x 0.2008 / 6.25 = 10.2 kg N. */
    @ParameterizedTest(name = "more nitrogen in the fish than in the feed of a {0}: {1}")
    @CsvSource({"tank, IMPOSSIBLE", "pond, UNUSUAL"})
    void more_nitrogen_out_than_in_contradicts_a_tank_and_is_remarked_of_a_pond(String kind, BalanceVerdict verdict) {
        Inventory inventory = farm(STOCKED + ", \"pond\": {\"kind\": \"" + kind
                + "\", \"area_m2\": 90}, \"feed\": [{\"ingredient\": \"maize\", \"kg\": 20, \"moisture\": 0.12}]");

        assertEquals(
                List.of(verdict),
                inventory.balances().stream()
                        .filter(balance -> balance.kind() == BalanceKind.NITROGEN)
                        .map(balance -> balance.verdict())
                        .toList());
    }

    /** Published of tilapia: 0.9 to 1.82 kg of feed per kg gained (duodu-2020, gephart-2021). */
    @ParameterizedTest(name = "{0} kg of feed for 860 kg gained: {1}")
    @CsvSource({"1260, ", "500, less", "2600, more"})
    void feed_per_kg_gained_is_held_against_what_was_published_of_the_species(double fed, String word) {
        Inventory inventory = farm(POND + STOCKED + ", \"feed\": [{\"ingredient\": \"maize\", \"kg\": " + fed + "}]");

        List<Remark> remarks = inventory.remarks().stream()
                .filter(remark -> remark.text().contains("of feed per kg gained"))
                .toList();
        assertEquals(word != null, !remarks.isEmpty(), remarks::toString);
        remarks.forEach(
                remark -> assertTrue(remark.text().contains(word + " than published of tilapia"), remark::text));
    }

    @Test
    void given_no_more_out_than_was_put_in_then_a_remark_says_so() {
        Inventory inventory = farm(POND + ", \"stocked\": {\"kg\": 900}" + FED);

        assertTrue(inventory.remarks().stream()
                .anyMatch(remark -> remark.text().startsWith("no more is harvested than was put in")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'\"product\": \"mealworm\", \"harvest\": {\"kg_per_year\": 9}' | /product",
                "'\"harvest\": {\"kg_per_year\": 9}' | /product",
                "'\"product\": \"tilapia\"' | /harvest",
                "'\"product\": \"tilapia\", \"harvest\": {\"kg_per_year\": 9, \"fish\": 9}' | /harvest/kg_per_year",
                "'\"product\": \"tilapia\", \"harvest\": {\"fish\": 9}' | /harvest/grams_per_fish",
                "'\"product\": \"tilapia\", \"harvest\": {\"kg_per_year\": 9}, \"pond\": {\"kind\": \"sea\"}' | /pond/kind",
                "'\"product\": \"tilapia\", \"harvest\": {\"kg_per_year\": 9}, \"heads\": 4' | /heads",
                "'\"product\": \"tilapia\", \"harvest\": {\"kg_per_year\": 9}, \"co_products\": [{\"kg\": 4}]' | /co_products"
            })
    void records_that_are_not_those_of_a_fish_farm_are_refused_at_their_place(String fields, String pointer) {
        Input body = body("{\"kind\": \"fish\", " + fields + "}");

        assertEquals(Optional.empty(), new SystemReading(LIBRARY).read(body));
        assertTrue(
                body.faults().stream().anyMatch(fault -> fault.pointer().equals(Optional.of(pointer))),
                body.faults()::toString);
    }
}
