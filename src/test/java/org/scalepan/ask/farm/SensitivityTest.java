package org.scalepan.ask.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.HerdRecordsFixture;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.uncertainty.Summary;

/** The farms are invented. */
class SensitivityTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final Sampling SAMPLING = new Sampling(0.9, 10_000, 1);

    private static EditableRecords bins() {
        return new EditableRecords.Insects(InsectRecordsFixture.of(LIBRARY, "superworm", 1200)
                .in("peru")
                .feed("wheat-bran", 3600)
                .energy("diesel", 40)
                .transport("truck-average", 90)
                .farm());
    }

    private static EditableRecords hens() {
        return new EditableRecords.Animals(HerdRecordsFixture.of(LIBRARY, "layers", 10)
                .gives(Herd.AnimalKind.EGGS, 90)
                .feed("maize", 300)
                .herd());
    }

    private static Sensitivity of(EditableRecords notebook, Optional<Side> against, ComparisonBasis basis) {
        return Sensitivity.of(
                LIBRARY,
                new Sensitivity.SensitivityQuestion(
                        new Side.Recorded(notebook.inventory(LIBRARY), false),
                        Optional.of(notebook),
                        against,
                        basis,
                        SAMPLING,
                        10,
                        Map.of("energy:diesel", 50.0)));
    }

    private static Side published(String product) {
        return new Side.PublishedSide(Asked.of(LIBRARY).item(product));
    }

    private static Sensitivity of(String product, Optional<Side> against) {
        return Sensitivity.of(
                LIBRARY,
                new Sensitivity.SensitivityQuestion(
                        published(product),
                        Optional.empty(),
                        against,
                        Asked.of(LIBRARY).basis(),
                        SAMPLING,
                        10,
                        Map.of()));
    }

    @Test
    void the_variance_is_that_of_the_footprint_and_the_shares_make_it_up() {
        Sensitivity answer = of(bins(), Optional.empty(), Asked.of(LIBRARY).basis());
        Summary summary = answer.estimate().summary().orElseThrow();
        double variance = Math.pow(summary.meanStandardError(), 2) * summary.draws();

        assertEquals(1, answer.sobol().orElseThrow().variance() / variance, 0.05);
        // Factors of a farm work nearly in sums and products with small uncertainty: hardly anything is left to their
        // interplay.
        assertEquals(1, answer.sumOfFirst(), 0.1);
        assertTrue(answer.sumOfTotal() >= answer.sumOfFirst() - 0.05);
    }

    @Test
    void inputs_come_by_their_total_share_each_with_words_and_its_rows() {
        List<Sensitivity.UncertainInput> inputs =
                of(bins(), Optional.empty(), Asked.of(LIBRARY).basis()).inputs();

        assertTrue(inputs.size() > 5);
        for (int i = 1; i < inputs.size(); i++) {
            assertTrue(
                    inputs.get(i - 1).share().total() >= inputs.get(i).share().total());
        }
        for (Sensitivity.UncertainInput input : inputs) {
            assertTrue(input.name().words().length() > 3, input::toString);
            assertTrue(
                    !input.name().rows().isEmpty() || input.stream().id().equals("default.insect-gases"),
                    input::toString);
            sound(input);
        }
        assertTrue(inputs.stream().anyMatch(input -> input.name().words().equals("protein of superworm")));
    }

    private static void sound(Sensitivity.UncertainInput input) {
        double error =
                4 * Math.hypot(input.share().firstStandardError(), input.share().totalStandardError());
        assertTrue(input.share().total() >= input.share().first() - error, input::toString);
    }

    @Test
    void a_factor_on_both_sides_of_a_ratio_cancels() {
        // Two farms that differ only in their mortality have the same feed, which is nearly all they cause.
        EditableRecords bins = bins();
        Side other = new Side.Recorded(
                RecordInputs.of(LIBRARY, bins).get("mortality").at().apply(0.5).inventory(LIBRARY), false);
        Sensitivity answer = of(bins, Optional.of(other), Asked.of(LIBRARY).basis());

        assertEquals("default.insect-gases", answer.inputs().get(0).stream().id());
        assertTrue(answer.inputs().stream()
                .noneMatch(input -> input.name().words().equals("protein of superworm")
                        && input.share().total() > 1e-12));
    }

    @Test
    void what_studies_differ_by_is_an_input_of_a_published_product() {
        Sensitivity answer = of("beef", Optional.empty());
        Sensitivity.UncertainInput choice = answer.inputs().stream()
                .filter(input -> input.name().kind() == InputName.InputKind.BETWEEN_STUDIES)
                .findFirst()
                .orElseThrow();

        assertEquals("differences between studies of beef", choice.name().words());
        assertTrue(choice.share().total() > 0.3);
        Sensitivity.InputSwing swing = choice.swing().orElseThrow();
        assertTrue(swing.low() < answer.central() && answer.central() < swing.high());
        assertTrue(answer.inputs().stream().anyMatch(input -> input.name().kind() == InputName.InputKind.CONVERSION));
        assertTrue(answer.inputs().stream()
                .anyMatch(input -> input.name().kind() == InputName.InputKind.PUBLISHED_NUMBER));
    }

    @Test
    void shares_of_a_ratio_do_not_hang_on_which_side_is_below() {
        Sensitivity one = of("mealworm", Optional.of(published("beef")));
        Sensitivity other = of("beef", Optional.of(published("mealworm")));

        assertEquals(
                one.sobol().orElseThrow().variance(),
                other.sobol().orElseThrow().variance(),
                1e-9);
        for (int i = 0; i < 3; i++) {
            assertEquals(one.inputs().get(i).stream(), other.inputs().get(i).stream());
            assertEquals(
                    one.inputs().get(i).share().total(),
                    other.inputs().get(i).share().total(),
                    1e-9);
        }
        assertEquals(1 / one.central(), other.central(), 1e-9);
    }

    @Test
    void swings_of_a_farm_are_about_its_central_figure() {
        Sensitivity answer = of(bins(), Optional.empty(), Asked.of(LIBRARY).basis());
        double central =
                ((SystemEstimate) answer.estimate()).system().orElseThrow().central();

        assertEquals(central, answer.central(), 1e-9 * central);
        answer.inputs().forEach(input -> {
            Sensitivity.InputSwing swing = input.swing().orElseThrow();
            assertTrue(
                    Math.min(swing.low(), swing.high()) <= central && central <= Math.max(swing.low(), swing.high()),
                    input::toString);
        });
    }

    @Test
    void what_can_be_changed_is_moved_by_the_percent_asked_and_sorted_by_what_it_does() {
        List<Sensitivity.EntrySwing> entries =
                of(bins(), Optional.empty(), Asked.of(LIBRARY).basis()).entries();

        for (int i = 1; i < entries.size(); i++) {
            assertTrue(Math.abs(entries.get(i - 1).atHigh() - entries.get(i - 1).atLow())
                    >= Math.abs(entries.get(i).atHigh() - entries.get(i).atLow()));
        }
        Sensitivity.EntrySwing diesel = entries.stream()
                .filter(swing -> swing.entry().id().equals("energy:diesel"))
                .findFirst()
                .orElseThrow();
        assertEquals(20, diesel.lowValue(), 1e-9);
        assertEquals(60, diesel.highValue(), 1e-9);
        Sensitivity.EntrySwing harvest = entries.stream()
                .filter(swing -> swing.entry().id().equals("yield"))
                .findFirst()
                .orElseThrow();
        assertTrue(harvest.atLow() > harvest.central() && harvest.central() > harvest.atHigh());
        // One ingredient alone is all feed and is said once.
        assertTrue(entries.stream().noneMatch(swing -> swing.entry().id().equals("feed:wheat-bran")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ghg", "land", "feed"})
    void a_flock_can_be_taken_apart_on_every_indicator_it_has(String indicator) {
        Sensitivity answer = of(
                hens(),
                Optional.empty(),
                Asked.of(LIBRARY)
                        .indicator(indicator)
                        .per(FunctionalUnit.KG_PRODUCT)
                        .basis());

        assertTrue(answer.missing().isEmpty());
        assertEquals(
                answer.inputs().isEmpty(),
                new SensitivityWords(answer).sentence().startsWith("Nothing in"));
    }

    @Test
    void the_same_seed_gives_the_same_shares() {
        Sensitivity one = of("chicken", Optional.empty());
        Sensitivity other = of("chicken", Optional.empty());

        assertEquals(one.inputs(), other.inputs());
    }

    @Test
    void without_a_figure_the_reason_is_said() {
        Sensitivity answer = of(
                bins(), Optional.empty(), Asked.of(LIBRARY).indicator("water").basis());

        assertTrue(answer.missing().orElseThrow().contains("nothing that counts for water"));
        assertTrue(new SensitivityWords(answer).sentence().startsWith("There is nothing to take apart"));
    }
}
