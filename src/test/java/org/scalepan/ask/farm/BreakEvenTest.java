package org.scalepan.ask.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.HerdRecordsFixture;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.herd.EnergyNeed;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.InsectFarm.CoProductRule;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.uncertainty.Quantiles;
import org.scalepan.words.Language;

/** Break-even values are checked by putting them back: the farms are invented. */
class BreakEvenTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final Sampling SAMPLING = new Sampling(0.9, 2_000, 1);

    private static InsectRecordsFixture bins() {
        return InsectRecordsFixture.of(LIBRARY, "superworm", 1200)
                .in("peru")
                .feed("wheat-bran", 3600)
                .feed("maize", 600)
                .energy("grid-electricity", 150)
                .energy("diesel", 40)
                .water(15)
                .transport("truck-average", 90)
                .area(40, 10)
                .mortality(0.1)
                .process("drying", 700, "grid-electricity");
    }

    private static EditableRecords farm(InsectRecordsFixture notebook) {
        return new EditableRecords.Insects(notebook.farm());
    }

    /** Larvae pressed for oil, which takes its part of the burden by price. */
    private static EditableRecords pressing() {
        return farm(bins().sold("meal", 300).coProduct("oil", 60, 3).allocate(CoProductRule.ECONOMIC, 5));
    }

    private static EditableRecords hens() {
        return new EditableRecords.Animals(HerdRecordsFixture.of(LIBRARY, "layers", 10)
                .in("peru")
                .gives(Herd.AnimalKind.EGGS, 90)
                .gives(Herd.AnimalKind.LIVE, 5)
                .feed("maize", 300)
                .energy("diesel", 3)
                .transport("truck-average", 10)
                .water(2)
                .area(4, 20)
                .herd());
    }

    private static EditableRecords cows() {
        return new EditableRecords.Animals(HerdRecordsFixture.of(LIBRARY, "dairy-cattle", 4)
                .in("kenya")
                .gives(Herd.AnimalKind.MILK, 9000)
                .gives(Herd.AnimalKind.LIVE, 300)
                .tier2(new EnergyNeed.Animal(300, 300, 0, 6, 4, 0, 0, 60), "stall")
                .feed("maize", 500)
                .none("energy")
                .herd());
    }

    private static BreakEven ask(EditableRecords notebook, String input, Side against, ComparisonBasis basis) {
        RecordInput entry = RecordInputs.of(LIBRARY, notebook).get(input);
        assertTrue(
                entry != null,
                () -> input + " is not in " + RecordInputs.of(LIBRARY, notebook).keySet());
        return BreakEven.of(LIBRARY, new BreakEven.BreakEvenQuestion(notebook, false, against, entry, basis, SAMPLING));
    }

    private static Side published(String product) {
        return new Side.PublishedSide(Asked.of(LIBRARY).item(product));
    }

    /** The same farm with one entry elsewhere, so that there is a value that makes the two equal. */
    private static Side moved(EditableRecords notebook, String input, double factor) {
        RecordInput entry = RecordInputs.of(LIBRARY, notebook).get(input);
        double value = entry.within(entry.present() * factor);
        return new Side.Recorded(entry.at().apply(value).inventory(LIBRARY), false);
    }

    private static BreakEven.FoundValue found(BreakEven answer) {
        return assertInstanceOf(
                BreakEven.FoundValue.class,
                answer.outcome(),
                () -> answer.outcome().toString());
    }

    static Stream<Arguments> everyEntry() {
        return Map.of("bins", farm(bins()), "pressing", pressing(), "hens", hens(), "cows", cows()).entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .flatMap(farm -> RecordInputs.of(LIBRARY, farm.getValue()).keySet().stream()
                        .filter(input -> !input.equals("water"))
                        .map(input -> Arguments.of(farm.getKey(), input, farm.getValue())));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("everyEntry")
    void a_value_put_back_into_the_records_makes_the_two_equal(String name, String input, EditableRecords notebook) {
        String indicator = input.equals("land") ? "land" : "ghg";
        boolean dried = input.equals("drying_energy");
        ComparisonBasis basis = Asked.of(LIBRARY)
                .indicator(indicator)
                .per(FunctionalUnit.KG_PRODUCT)
                .at(dried ? "processing-gate" : "farm-gate")
                .basis();
        if (!name.equals("pressing") && !name.equals("hens")) {
            basis = Asked.of(LIBRARY)
                    .indicator(indicator)
                    .per(name.equals("cows") ? FunctionalUnit.KG_PROTEIN : FunctionalUnit.KG_LIVE)
                    .at(dried ? "processing-gate" : "farm-gate")
                    .basis();
        }
        double factor = input.equals("grid_intensity") || dried ? 1.5 : 1.3;
        Side against = moved(notebook, input, factor);

        BreakEven answer = ask(notebook, input, against, basis);
        BreakEven.FoundValue found = found(answer);

        RecordInput entry = answer.question().input();
        // As POST /v1/footprint would: records read again, with random numbers of their own.
        double there = SystemEstimate.drawn(
                        LIBRARY, entry.at().apply(found.value()).inventory(LIBRARY), basis, false, SAMPLING)
                .summary()
                .orElseThrow()
                .median();
        double wanted = against.on(LIBRARY, basis, SAMPLING, SAMPLING.random())
                .summary()
                .orElseThrow()
                .median();
        assertEquals(wanted, there, 1e-6 * wanted);
        assertEquals(entry.present() * factor, found.value(), 1e-6 * found.value(), "the other farm was made with it");
    }

    /** No water of growing maize is held, so that both farms are lower bounds. */
    @Test
    void two_lower_bounds_have_no_break_even() {
        ComparisonBasis basis = Asked.of(LIBRARY)
                .indicator("water")
                .per(FunctionalUnit.KG_PRODUCT)
                .at("farm-gate")
                .basis();

        BreakEven answer = ask(hens(), "water", moved(hens(), "water", 1.3), basis);

        assertEquals(BreakEven.Reason.NOT_COUNTED, ((BreakEven.NoBreakEven) answer.outcome()).reason());
    }

    @Test
    void feed_to_be_equal_is_the_closed_form_where_feed_is_all_that_counts() {
        // 0.5 kg CO2e per kg of feed and nothing else: 2 kg CO2e per kg live are 4 kg of feed per kg.
        EditableRecords farm = farm(InsectRecordsFixture.of(LIBRARY, "palm-weevil", 100)
                .feed(org.scalepan.production.Fed.of("wheat-bran", 100))
                .frass(0, 0, org.scalepan.production.insects.InsectFarm.Fate.STORED, false));
        ComparisonBasis land = Asked.of(LIBRARY)
                .indicator("feed")
                .per(FunctionalUnit.KG_LIVE)
                .at("animal")
                .basis();
        Side twice = moved(farm, "feed", 2);

        BreakEven.FoundValue found = found(ask(farm, "feed", twice, land));

        assertEquals(200, found.value(), 1e-9);
        assertEquals(200, found.range().low().orElseThrow(), 1e-9);
        assertEquals(200, found.range().high().orElseThrow(), 1e-9);
        assertTrue(found.rising());
    }

    @Test
    void the_range_holds_nine_tenths_of_the_values_solved_draw_by_draw() {
        ComparisonBasis basis = Asked.of(LIBRARY).basis();
        EditableRecords notebook = farm(bins());
        BreakEven answer = ask(notebook, "energy:diesel", published("beef"), basis);
        BreakEven.FoundValue found = found(answer);

        // Diesel counts in proportion: two evaluations give each draw's own solution.
        CommonRandomNumbers random = SAMPLING.random();
        double[] reference = published("beef")
                .on(LIBRARY, basis, SAMPLING, random)
                .footprint()
                .orElseThrow()
                .draws();
        OneAtATimeCurve response =
                new OneAtATimeCurve(LIBRARY, answer.question().input(), basis, false, random);
        double[] none = response.draws(0);
        double[] thousand = response.draws(1000);
        double[] solved = new double[reference.length];
        for (int i = 0; i < solved.length; i++) {
            solved[i] = (reference[i] - none[i]) / (thousand[i] - none[i]) * 1000;
        }
        double[] quantiles = Quantiles.of(solved, 0.05, 0.5, 0.95);
        // Quantiles of the differences lie between the same two draws as those of the solutions.
        assertEquals(quantiles[0], found.range().low().orElseThrow(), 0.01 * quantiles[0]);
        assertEquals(quantiles[1], found.range().evenOdds().orElseThrow(), 0.01 * quantiles[1]);
        assertEquals(quantiles[2], found.range().high().orElseThrow(), 0.01 * quantiles[2]);
    }

    @Test
    void on_the_side_that_is_said_to_have_less_it_has_less() {
        ComparisonBasis basis = Asked.of(LIBRARY).basis();
        for (String input : List.of("feed", "yield", "energy:diesel", "transport")) {
            BreakEven answer = ask(farm(bins()), input, published("pork"), basis);
            BreakEven.FoundValue found = found(answer);
            double lower = found.value() * 0.9;
            double median = SystemEstimate.drawn(
                            LIBRARY,
                            answer.question().input().at().apply(lower).inventory(LIBRARY),
                            basis,
                            false,
                            SAMPLING)
                    .summary()
                    .orElseThrow()
                    .median();
            assertEquals(found.rising(), median < found.reference(), input);
        }
    }

    @Test
    void where_nothing_helps_the_reason_is_said() {
        ComparisonBasis basis = Asked.of(LIBRARY).basis();
        BreakEven above = ask(cows(), "feed", new Side.Recorded(hens().inventory(LIBRARY), false), basis);
        BreakEven.NoBreakEven none = assertInstanceOf(BreakEven.NoBreakEven.class, above.outcome());

        assertEquals(BreakEven.Reason.ALWAYS_ABOVE, none.reason());
        assertEquals(0, none.nearest().orElseThrow().value());
        assertTrue(none.nearest().orElseThrow().footprint()
                > none.nearest().orElseThrow().reference());
        assertTrue(
                new BreakEvenWords(above, Language.ENGLISH)
                        .sentence()
                        .startsWith("Even without any feed, invented stays above"),
                new BreakEvenWords(above, Language.ENGLISH).sentence());
    }

    @Test
    void an_entry_that_does_not_count_is_said_to_make_no_difference() {
        BreakEven answer =
                ask(farm(bins()), "water", published("beef"), Asked.of(LIBRARY).basis());

        assertEquals(BreakEven.Reason.NO_EFFECT, ((BreakEven.NoBreakEven) answer.outcome()).reason());
    }

    @Test
    void without_evidence_of_the_reference_there_is_nothing_to_be_equal_to() {
        ComparisonBasis basis = Asked.of(LIBRARY).indicator("water").basis();
        BreakEven answer = ask(farm(bins()), "water", published("beef"), basis);

        assertEquals(BreakEven.Reason.NO_FIGURE, ((BreakEven.NoBreakEven) answer.outcome()).reason());
    }

    @Test
    void a_herd_stays_asked_about_the_same_product_when_its_yield_changes() {
        // With hardly any milk the beef of the cull cows would hold more protein.
        RecordInput milk = RecordInputs.of(LIBRARY, cows()).get("yield");

        assertEquals(
                "milk",
                milk.at().apply(100).inventory(LIBRARY).output().product().id());
    }

    @Test
    void entries_are_those_that_the_records_have() {
        assertFalse(RecordInputs.of(LIBRARY, hens()).containsKey("mortality"));
        assertFalse(RecordInputs.of(LIBRARY, hens()).containsKey("grid_intensity"));
        assertFalse(RecordInputs.of(LIBRARY, farm(bins())).containsKey("price"));
        assertTrue(RecordInputs.of(LIBRARY, pressing()).containsKey("price:oil"));
        assertTrue(RecordInputs.missing("price").orElseThrow().contains("economic"));
        assertTrue(RecordInputs.missing("feeed").isEmpty());
    }

    @Test
    void a_harvest_by_container_is_told_by_container_and_what_is_sold_follows() {
        EditableRecords farm =
                farm(bins().harvest(new Harvest.ByContainer(40, 2.5, 12)).sold("dried", 400));
        RecordInput yield = RecordInputs.of(LIBRARY, farm).get("yield");

        assertEquals(2.5, yield.present());
        assertEquals(800, yield.at().apply(5).inventory(LIBRARY).output().amount(), 1e-9);
    }
}
