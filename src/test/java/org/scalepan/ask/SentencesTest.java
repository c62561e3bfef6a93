package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.Compared.SAMPLING;
import static org.scalepan.ask.Compared.compare;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.Summary;

/** Sentences carry unit, boundary, interval and number of studies, and no more figures than the evidence can bear. */
class SentencesTest {
    private static final Library LIBRARY = Libraries.bundled();

    @TempDir
    Path folder;

    private static Summary summary(double median, double low, double high) {
        return new Summary(median, median, low, high, 0.9, 10_000, 0, 0);
    }

    private static Sentences sentences(Asked asked) {
        return new Sentences(asked.basis(), 0.9);
    }

    @Test
    void a_footprint_has_two_significant_figures_its_interval_and_its_unit() {
        assertEquals(
                "16 (11 to 24) kg CO2e per kg protein",
                sentences(Asked.of(LIBRARY)).footprint(summary(16.42, 10.96, 24.4)));
        assertEquals(
                "0.0031 (0.00099 to 0.013) m2*yr per kg edible product",
                sentences(Asked.of(LIBRARY).indicator("land").per(FunctionalUnit.KG_EDIBLE))
                        .footprint(summary(0.00312, 0.000993, 0.01251)));
    }

    @Test
    void a_ratio_has_two_figures_below_ten_and_at_most_two_above() {
        assertEquals("8.2 (3.9 to 17)", Sentences.ratio(summary(8.243, 3.871, 17.4)));
        assertEquals("120 (1.0 to 990)", Sentences.ratio(summary(118.7, 1.0, 991)));
    }

    /** Invented results without uncertainty, so that every figure of the sentence is known. */
    @Test
    void the_sentence_says_who_how_much_per_what_where_and_from_how_many_studies() {
        Library library = new InventedResults(folder)
                .exact("cockroach", "oonincx-2010", 2, "kg-live")
                .exact("sun-beetle", "dreyer-2021", 9, "kg-live")
                .library();
        Asked live = Asked.of(library).per(FunctionalUnit.KG_LIVE);
        Comparison comparison = compare(library, live, SAMPLING, "cockroach", "sun-beetle");
        Sentences say = sentences(live);
        Comparison.ComparedProduct item = comparison.items().get(0);
        assertEquals(
                "Argentinean cockroach, up to the farm gate: 2.0 (2.0 to 2.0) kg CO2e per kg live weight (90 % interval for what the next"
                        + " study would find; 1 study, own rows among them; AR6 GWP100, without land-use change where studies report it).",
                say.estimate(item.estimate()));
        assertEquals(
                "Sun beetle has 4.5 (4.5 to 4.5) times the greenhouse gas emissions of Argentinean cockroach, per kg live"
                        + " weight, up to the farm gate (90 % interval for what the next study of each would find; 1 study of Argentinean cockroach, own rows among them, 1 study of sun beetle, own rows among them; AR6"
                        + " GWP100, without land-use change where studies report it). Argentinean cockroach has less in more than 99 % of the"
                        + " draws; fewer than 3 studies on a side, those from memory not counted: the evidence is thin.",
                say.versus(
                        item.estimate(), comparison.reference(), item.versus().orElseThrow()));
    }

    @Test
    void the_worse_product_is_said_to_have_more_and_not_a_fraction_times_less() {
        Library library = new InventedResults(folder)
                .exact("cockroach", "oonincx-2010", 9, "kg-live")
                .exact("sun-beetle", "dreyer-2021", 2, "kg-live")
                .library();
        Asked live = Asked.of(library).per(FunctionalUnit.KG_LIVE);
        Comparison comparison = compare(library, live, SAMPLING, "cockroach", "sun-beetle");
        Comparison.ComparedProduct item = comparison.items().get(0);
        String sentence = sentences(live)
                .versus(item.estimate(), comparison.reference(), item.versus().orElseThrow());
        assertTrue(
                sentence.startsWith(
                        "Argentinean cockroach has 4.5 (4.5 to 4.5) times the greenhouse gas emissions of sun beetle"),
                sentence);
        assertTrue(sentence.contains("Argentinean cockroach has less in fewer than 1 % of the draws"), sentence);
    }

    @Test
    void without_evidence_the_sentence_says_so_and_gives_no_figure() {
        Asked asked = Asked.of(LIBRARY);
        PublishedEstimate weevil = Estimating.estimate(LIBRARY, asked.item("palm-weevil"), asked.basis(), SAMPLING);
        assertEquals(
                "Palm weevil, up to the farm gate: no evidence per kg protein.",
                sentences(asked).estimate(weevil));
    }

    @Test
    void another_form_than_the_usual_is_named() {
        Asked asked = Asked.of(LIBRARY).at("processing-gate");
        PublishedEstimate meal = Estimating.estimate(LIBRARY, asked.item("mealworm:meal"), asked.basis(), SAMPLING);
        String sentence = sentences(asked).estimate(meal);
        assertTrue(sentence.startsWith("Yellow mealworm (meal), up to the processing gate: "), sentence);
    }

    /** Property: on real evidence too, no figure of a sentence goes without its interval. */
    @ParameterizedTest
    @CsvSource({
        "mealworm, beef, ghg, farm-gate",
        "mealworm, pork, land, farm-gate",
        "pulses, beef, ghg, retail",
        "chicken, salmon, energy, farm-gate",
        "tofu, milk, water, retail"
    })
    void the_interval_always_stands_beside_the_figure(
            String product, String reference, String indicator, String boundary) {
        Asked asked = Asked.of(LIBRARY).indicator(indicator).at(boundary);
        Comparison comparison = compare(LIBRARY, asked, SAMPLING, product, reference);
        Comparison.ComparedProduct item = comparison.items().get(0);
        Sentences say = sentences(asked);
        String figure = "[0-9.]+ \\([0-9.]+ to [0-9.]+\\)";
        String estimate = say.estimate(item.estimate());
        assertTrue(
                estimate.matches("[^0-9]+: " + figure
                        + " .+ \\(90 % interval for what the next study would find; [0-9]+ stud(y|ies).*\\)\\."),
                estimate);
        String versus = say.versus(
                item.estimate(), comparison.reference(), item.versus().orElseThrow());
        assertTrue(versus.matches("[^0-9]+ has " + figure + " times the .+, per kg protein, .+"), versus);
        assertTrue(
                versus.contains("(90 % interval for what the next study of each would find; "
                        + item.estimate().studies() + " stud"),
                versus);
        boolean enough =
                Math.min(seen((PublishedEstimate) item.estimate()), seen((PublishedEstimate) comparison.reference()))
                        >= ThinEvidence.FEWEST_STUDIES;
        assertEquals(enough, versus.endsWith("of the draws."), versus);
        assertFalse(versus.matches(".*(likely|certain|probability).*"), versus);
    }

    private static int seen(PublishedEstimate estimate) {
        return estimate.studies() - estimate.studiesFromMemory();
    }

    /** Invented results: three studies a side are enough only where each of them was seen. */
    @ParameterizedTest
    @CsvSource({"secondary, true", "memory, false"})
    void a_study_from_memory_does_not_count_towards_the_three(String gradeOfTheThird, boolean enough) {
        InventedResults invented = new InventedResults(folder);
        for (String seen : List.of("oonincx-2010", "dreyer-2021")) {
            invented.graded("cockroach", seen, 2, "secondary").graded("sun-beetle", seen, 8, "secondary");
        }
        Library library = invented.graded("sun-beetle", "thevenot-2018", 7, "secondary")
                .graded("cockroach", "thevenot-2018", 4, gradeOfTheThird)
                .library();
        Asked live = Asked.of(library).per(FunctionalUnit.KG_LIVE);
        Comparison comparison = compare(library, live, SAMPLING, "cockroach", "sun-beetle");
        Comparison.ComparedProduct item = comparison.items().get(0);
        String sentence = sentences(live)
                .versus(item.estimate(), comparison.reference(), item.versus().orElseThrow());
        assertEquals(3, item.estimate().studies());
        assertEquals(enough, item.estimate().hasEnoughStudies());
        assertEquals(enough, sentence.endsWith(" of the draws."), sentence);
        assertEquals(!enough, sentence.contains("those from memory not counted"), sentence);
    }
}
