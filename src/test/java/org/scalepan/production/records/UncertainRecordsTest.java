package org.scalepan.production.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.input.Input;
import org.scalepan.production.FieldKind;
import org.scalepan.production.Inventory;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.SystemFootprint;
import org.scalepan.production.Tally;
import org.scalepan.uncertainty.Summary;

/** Every number of a farm's records may be a range. The farms are invented. */
class UncertainRecordsTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final List<String> INDICATORS = List.of("ghg", "land", "feed", "energy", "water");
    private static final int DRAWS = 2000;

    private static final String CONTAINERS = """
            {"kind": "insects", "name": "loft", "product": "mealworm", "region": "netherlands", "form": "dried",
             "harvest": {"containers": 40, "kg_per_container": 2.5, "cycles_per_year": 12}, "sold_kg": 400,
             "price_per_kg": 8, "co_product_allocation": "economic", "cycle_days": 28, "pairs_stocked": 3,
             "kept_for_breeding": 0.05, "mortality": 0.2, "grid_ghg_per_kwh": 0.4, "water_m3": 15,
             "building_m2": 40, "yard_m2": 30,
             "feed": [{"ingredient": "wheat-bran", "kg": 3000, "moisture": 0.12, "burden": "displaced", "displaces": "maize",
                       "displaced_kg_per_kg": 0.8},
                      {"ingredient": "carrot", "kg": 500, "ghg_per_kg": 0.1, "land_per_kg": 0.4, "energy_per_kg": 2,
                       "water_per_kg": 0.01}],
             "energy": [{"carrier": "grid-electricity", "amount": 900}, {"carrier": "diesel", "amount": 20}],
             "transport": [{"mode": "van-diesel", "tonne_km": 30}],
             "materials": [{"material": "plastic-pp", "kg": 12, "years": 4}],
             "co_products": [{"name": "oil", "kg": 20, "price_per_kg": 4}],
             "frass": {"kg": 600, "nitrogen": 0.03, "fate": "spread"},
             "processing": [{"step": "drying", "water_kg": 600, "carrier": "natural-gas", "kwh_per_kg": 1.2}]}""";

    private static final String COUNTED = """
            {"kind": "insects", "name": "loft", "product": "mealworm", "harvest": {"larvae": 200000, "larvae_per_kg": 800},
             "feed": [{"ingredient": "wheat-bran", "kg": 900, "burden": "economic"}], "kept_for_breeding": 0.05}""";

    private static final String PLANNED = """
            {"kind": "insects", "name": "tubs", "region": "norway",
             "product": {"name": "rhinoceros beetle", "dry_matter": 0.35, "protein": 0.18, "nitrogen": 0.03, "fat": 0.1},
             "harvest": {"pairs": 20, "eggs_per_pair": 60, "hatch": 0.7, "survival": 0.6, "batches_lost": 0.1,
                         "grams_per_larva": 20, "cycles_per_year": 2},
             "heating": {"room_m2": 12, "temperature_c": 27, "insulation": "well-insulated", "carrier": "natural-gas"},
             "feed": [{"name": "leaf compost", "kg": 1500, "moisture": 0.6, "nitrogen": 0.015, "burden": "burden-free"}]}""";

    private static final String ANALYSED = """
            {"kind": "insects", "name": "hall", "product": "sun-beetle", "harvest": {"kg_per_year": 60},
             "composition": {"dry_matter": 0.3, "protein": 0.18, "nitrogen": 0.03, "fat": 0.06},
             "feed": [{"ingredient": "carrot", "kg": 1500}]}""";

    private static final String WEIGHED = """
            {"kind": "insects", "name": "loft", "product": "mealworm", "harvest": {"kg_per_year": 250}, "mortality": 0.1, "kept_for_breeding": 0.1,
             "feed": [{"ingredient": "wheat-bran", "kg": 900, "burden": "economic"}]}""";

    private static final String COWS = """
            {"kind": "herd", "name": "byre", "animals": "dairy-cattle", "ipcc_region": "africa", "heads": 12,
             "breeding_stock": "included", "yield": {"milk_kg": 9000, "live_kg": 500}, "climate": "tropical-moist",
             "manure": [{"system": "solid-storage", "share": 0.6}, {"system": "pasture", "share": 0.4}],
             "cattle": {"weight_kg": 350, "mature_weight_kg": 400, "gain_kg_per_day": 0.1, "milk_kg_per_day": 2.2,
                        "milk_fat_percent": 4, "pregnant_share": 0.5, "work_hours_per_day": 0.5,
                        "digestibility_percent": 58, "methane_conversion_percent": 6.5, "crude_protein_percent": 11}}""";

    private static final String HENS = """
            {"kind": "herd", "name": "run", "animals": "layers", "ipcc_region": "africa", "heads": 30,
             "breeding_stock": "included", "yield": {"eggs_kg": 220}, "climate": "tropical-moist",
             "feed": [{"ingredient": "maize", "kg": 1100}]}""";

    private static final String PONDS = """
            {"kind": "fish", "name": "ponds", "product": "tilapia", "harvest": {"fish": 2000, "grams_per_fish": 450},
             "stocked": {"fish": 2300, "grams_per_fish": 20}, "building_m2": 20,
             "pond": {"area_m2": 1200, "fertiliser_n_kg": 5, "fertiliser_p2o5_kg": 3, "manure_kg": 100, "lime_kg": 30},
             "feed": [{"ingredient": "maize", "kg": 1260}]}""";

    private static final String TANKS = """
            {"kind": "fish", "name": "tanks", "product": "tilapia", "harvest": {"kg_per_year": 900}, "stocked": {"kg": 40},
             "pond": {"kind": "tank", "area_m2": 60}, "feed": [{"ingredient": "maize", "kg": 1260}]}""";

    private static ObjectNode tree(String records) {
        try {
            return (ObjectNode) new JsonMapper().readTree(records);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Inventory read(JsonNode records) {
        Input body = Input.body(records);
        Optional<Inventory> read = new SystemReading(LIBRARY).read(body);
        assertEquals(List.of(), body.faults());
        return read.orElseThrow();
    }

    /** The object that has a field of a path such as {@code feed.0.kg}, first entries of lists. */
    private static ObjectNode owner(ObjectNode records, String path) {
        JsonNode at = records;
        String[] steps = path.split("\\.");
        for (String step : Arrays.copyOf(steps, steps.length - 1)) {
            at = at.isArray() ? at.path(Integer.parseInt(step)) : at.path(step);
        }
        return (ObjectNode) at;
    }

    private static ObjectNode with(String records, String path, double... range) {
        ObjectNode tree = tree(records);
        String field = path.substring(path.lastIndexOf('.') + 1);
        ArrayNode list = owner(tree, path).putArray(field);
        Arrays.stream(range).forEach(list::add);
        return tree;
    }

    private static SystemFootprint system(Inventory inventory, String indicator) {
        return Tally.of(LIBRARY, inventory)
                .indicator(indicator)
                .at("processing-gate")
                .system();
    }

    private static Summary drawn(Inventory inventory, String indicator) {
        return system(inventory, indicator)
                .footprint(new CommonRandomNumbers(1, DRAWS))
                .summary(0.9);
    }

    private record Place(String records, String path, double value) {
        @Override
        public String toString() {
            return path + " of " + records.substring(records.indexOf("name") + 8, records.indexOf("name") + 12);
        }
    }

    /** Every number of the farms above, with the field that it is. */
    static Stream<Place> numbers() {
        return Stream.of(CONTAINERS, COUNTED, PLANNED, ANALYSED, WEIGHED, COWS, HENS, PONDS, TANKS)
                .flatMap(records -> numbers(records, tree(records), ""));
    }

    private static Stream<Place> numbers(String records, JsonNode node, String path) {
        if (node.isNumber()) {
            return Stream.of(new Place(records, path.substring(1), JsonAt.number(node, "")));
        }
        if (node.isArray()) {
            return Stream.iterate(0, i -> i + 1)
                    .limit(node.size())
                    .flatMap(i -> numbers(records, node.path(i), path + "." + i));
        }
        return node.properties().stream()
                .flatMap(field -> numbers(records, field.getValue(), path + "." + field.getKey()));
    }

    /** The same but for shares of manure, of which no other can be put in the place of one alone. */
    static Stream<Place> amounts() {
        return numbers().filter(place -> !place.path().startsWith("manure"));
    }

    /** The heat of a room goes from its least to its most, whatever its records are drawn as. */
    static Stream<Place> drawn() {
        return amounts().filter(place -> !place.path().startsWith("heating"));
    }

    @Test
    void the_farms_here_have_every_number_that_records_can_have() {
        List<String> tried = numbers()
                .map(place -> place.path().replaceAll("\\.\\d+\\.", ".#."))
                .toList();

        assertEquals(
                List.of(),
                Stream.of(RecordField.values())
                        .filter(field -> field.kind() == FieldKind.NUMBER)
                        .map(RecordField::path)
                        .filter(path -> !path.startsWith("heating.") && !tried.contains(path))
                        .toList());
    }

    /** A range so narrow that it is next to a number gives what the number gives. */
    @ParameterizedTest
    @MethodSource("numbers")
    void a_narrow_range_gives_the_answer_of_the_number(Place place) {
        double value = place.value();
        Inventory known = read(tree(place.records()));
        Inventory narrow = read(with(place.records(), place.path(), value * (1 - 1e-5), value * (1 + 1e-5)));

        for (String indicator : INDICATORS) {
            if (system(known, indicator).isEmpty()) {
                continue;
            }
            double figure = system(known, indicator).central();
            assertEquals(figure, system(narrow, indicator).central(), 1e-3 * figure, indicator);
            Summary knownDraws = drawn(known, indicator);
            Summary draws = drawn(narrow, indicator);
            assertEquals(knownDraws.median(), draws.median(), 1e-3 * figure, indicator);
            assertEquals(knownDraws.low(), draws.low(), 1e-3 * figure, indicator);
            assertEquals(
                    system(known, indicator).firstOrder().lnSd(),
                    system(narrow, indicator).firstOrder().lnSd(),
                    1e-3,
                    indicator);
        }
    }

    /**
     * What a record moves when it is another number, it moves as a range: first-order propagation of a narrow range is the slope of the
     * figure times the spread of the range.
     */
    @ParameterizedTest
    @MethodSource("drawn")
    void first_order_propagation_has_the_slope_of_every_record(Place place) {
        double value = place.value();
        double sd = 0.01;
        double half = sd * Math.sqrt(3);
        Inventory known = read(tree(place.records()));
        Inventory range = read(with(place.records(), place.path(), value * (1 - half), value * (1 + half)));
        double lower = value * (1 - sd);
        Inventory low = read(with(place.records(), place.path(), lower, lower * (1 + 1e-9)));
        Inventory high = read(with(place.records(), place.path(), value * (1 + sd), value * (1 + sd) * (1 + 1e-9)));

        for (String indicator : INDICATORS) {
            if (system(known, indicator).isEmpty()) {
                continue;
            }
            double figure = system(known, indicator).central();
            double slope =
                    (system(high, indicator).central() - system(low, indicator).central()) / 2 / figure;
            double lnSd = system(range, indicator).firstOrder().lnSd();
            double without = system(known, indicator).firstOrder().lnSd();
            assertEquals(Math.hypot(without, slope), lnSd, 2e-4, indicator);
        }
    }

    @Test
    void the_key_is_the_name_of_the_system_and_the_path_of_the_field() {
        Inventory inventory = read(with(CONTAINERS, "feed.1.kg", 400, 600));
        CommonRandomNumbers random = new CommonRandomNumbers(1, 10);
        system(inventory, "ghg").footprint(random);

        assertTrue(
                random.streams().stream().anyMatch(stream -> stream.id().equals("records/loft/feed.1.kg")),
                () -> random.streams().toString());
    }

    /** Somewhere else in a question the same records are the same draws. */
    @Test
    void where_the_records_stand_in_a_question_does_not_matter() {
        ObjectNode question = new JsonMapper().createObjectNode();
        question.putObject("compare").putArray("systems").add(tree(WEIGHED)).add(with(WEIGHED, "feed.0.kg", 700, 900));
        Input body = Input.body(question);
        Inventory nested = new SystemReading(LIBRARY)
                .read(body.object("compare").orElseThrow().objects("systems", 5).get(1))
                .orElseThrow();

        assertEquals(read(with(WEIGHED, "feed.0.kg", 700, 900)), nested);
    }

    @Test
    void without_a_name_the_usual_name_stands_for_it() {
        ObjectNode records = with(WEIGHED, "water_m3", 1, 2);
        records.remove("name");

        assertTrue(read(records).flows().stream()
                .flatMap(flow -> flow.term().uses().stream())
                .flatMap(use -> use.factor().behind())
                .anyMatch(factor -> factor.id().equals(RecordedNumber.key("farm", "water_m3"))));
    }

    /** A farm beside itself under the same name is 1 in every draw; so is one with other records of certain numbers. */
    @Test
    void two_systems_of_one_name_and_path_share_draws() {
        CommonRandomNumbers random = new CommonRandomNumbers(1, DRAWS);
        double[] ratios = system(read(with(WEIGHED, "harvest.kg_per_year", 200, 300)), "feed")
                .footprint(random)
                .dividedBy(system(read(with(WEIGHED, "harvest.kg_per_year", 400, 600)), "feed")
                        .footprint(random));

        for (double ratio : ratios) {
            assertEquals(2, ratio, 1e-9, "half the harvest in every draw");
        }
    }

    /** With the harvest between a half and twice of what it was, the figure is wider at both ends. */
    @ParameterizedTest
    @CsvSource({"harvest.kg_per_year, 125, 500", "feed.0.kg, 450, 1800", "kept_for_breeding, 0, 0.9"})
    void a_range_widens_the_interval(String path, double low, double high) {
        Summary known = drawn(read(tree(WEIGHED)), "ghg");
        Summary range = drawn(read(with(WEIGHED, path, low, high)), "ghg");

        assertTrue(range.high() / range.low() > known.high() / known.low(), range + " beside " + known);
    }

    /** Shares of manure that are ranges are normalised, so that all manure goes somewhere: methane of one system alone does not change. */
    @Test
    void shares_of_manure_make_a_whole_in_every_draw() {
        ObjectNode records = tree(COWS);
        ArrayNode manure = records.putArray("manure");
        for (double[] share : new double[][] {{0.5, 0.9}, {0.2, 0.4}}) {
            ObjectNode one = manure.addObject().put("system", "solid-storage");
            one.putArray("share").add(share[0]).add(share[1]);
        }
        ObjectNode whole = tree(COWS);
        whole.putArray("manure").addObject().put("system", "solid-storage").put("share", 1);

        assertEquals(
                drawn(read(whole), "ghg").high(), drawn(read(records), "ghg").high(), 1e-6);
    }

    @Test
    void shares_of_manure_that_cannot_make_a_whole_are_refused() {
        ObjectNode records = tree(COWS);
        records.putArray("manure")
                .addObject()
                .put("system", "solid-storage")
                .putArray("share")
                .add(0.2)
                .add(0.6);
        Input body = Input.body(records);
        new SystemReading(LIBRARY).read(body);

        assertEquals(1, body.faults().size());
        assertEquals(
                "the shares of the manure systems add up to something from 0.2 to 0.6; they must add up to 1",
                body.faults().get(0).message());
    }

    /** Nothing comes out of nothing: frass of feed that may hold less nitrogen than the larvae is never below zero. */
    @Test
    void frass_by_the_balance_is_never_below_nothing() {
        Inventory inventory = read(with(WEIGHED, "feed.0.kg", 100, 2000));
        double[] animal = Tally.of(LIBRARY, inventory)
                .at("animal")
                .system()
                .footprint(new CommonRandomNumbers(1, DRAWS))
                .draws();

        assertTrue(Arrays.stream(animal).allMatch(draw -> draw > 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[400]      | feed.0.kg | or a range of such: [low, high] or [low, best guess, high]",
                "[1,2,3,4]  | feed.0.kg | or a range of such: [low, high] or [low, best guess, high]",
                "[-1, 5]    | feed.0.kg | kg must be a number from 0 to 1000000000000, or a range",
                "[\"4\", 5] | feed.0.kg | or a range of such: [low, high] or [low, best guess, high]",
                "\"4..5\"   | feed.0.kg | or a range of such: [low, high] or [low, best guess, high]",
                "[600, 400] | feed.0.kg | kg must rise from low to high: [low, high] or [low, best guess, high]",
                "[4, 9, 8]  | feed.0.kg | kg must rise from low to high: [low, high] or [low, best guess, high]",
                "[500, 500] | feed.0.kg | kg must rise from low to high: [low, high] or [low, best guess, high]",
                "[0, 1]     | mortality | mortality must be a number from 0 to 0.99, or a range of such",
                "[2020, 2022] | year | year must be one number from 1990 to 2100, not a range",
            })
    void a_wrong_range_is_refused_with_what_would_be_right(String value, String path, String message) throws Exception {
        ObjectNode records = tree(WEIGHED);
        owner(records, path).set(path.substring(path.lastIndexOf('.') + 1), new JsonMapper().readTree(value));
        Input body = Input.body(records);

        assertTrue(new SystemReading(LIBRARY).read(body).isEmpty());
        assertEquals(1, body.faults().size(), () -> body.faults().toString());
        assertEquals(
                "/" + path.replace('.', '/'), body.faults().get(0).pointer().orElseThrow());
        assertTrue(
                body.faults().get(0).message().contains(message),
                () -> body.faults().toString());
    }
}
