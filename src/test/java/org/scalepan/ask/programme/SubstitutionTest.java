package org.scalepan.ask.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.ask.Brought;
import org.scalepan.ask.Compared;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.InventedResults;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Side;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.input.Obstacle;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;

/** A programme substitutes one food for another: the impact of the displaced food is avoided, that of the product is caused. */
class SubstitutionTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final double EXACT = 1e-9;
    private static final double NEARLY_EXACT = 1e-4;

    private static Brought bring(String product) {
        return Brought.of(LIBRARY, Asked.of(LIBRARY), product);
    }

    private static Asked feed() {
        return Asked.of(LIBRARY).at("processing-gate");
    }

    private static void assertSame(Summary expected, Summary got, double tolerance) {
        assertEquals(expected.median(), got.median(), tolerance);
        assertEquals(expected.mean(), got.mean(), tolerance);
        assertEquals(expected.low(), got.low(), tolerance);
        assertEquals(expected.high(), got.high(), tolerance);
    }

    @Test
    void a_worked_table_of_invented_footprints_without_uncertainty(@TempDir Path folder) {
        // kg CO2e per kg edible: product 3, first part of the baseline 10, second 2. 1 000 kg a year at a rate of 0.6:
        // displaced 600 kg, of which 450 kg at 10 and 150 kg at 2: 4.5 + 0.3 = 4.8 t; caused 3.0 t; avoided 1.8 t.
        Library library = new InventedResults(folder)
                .exact("cockroach", "oonincx-2010", 3, "kg-edible")
                .exact("sun-beetle", "oonincx-2010", 10, "kg-edible")
                .exact("migratory-locust", "oonincx-2010", 2, "kg-edible")
                .library();
        YearlyChange.Figures figures = Brought.of(library, Asked.of(library), "cockroach")
                .kilograms(1_000, FunctionalUnit.KG_EDIBLE)
                .insteadOf("sun-beetle", 0.75)
                .insteadOf("migratory-locust", 0.25)
                .on(EqualBasis.EDIBLE)
                .rate(0.6)
                .figures();

        assertEquals(4.8, figures.displaced().median(), NEARLY_EXACT);
        assertEquals(3.0, figures.own().median(), NEARLY_EXACT);
        assertEquals(1.8, figures.avoided().low(), NEARLY_EXACT);
        assertEquals(1.8, figures.avoided().high(), NEARLY_EXACT);
        assertEquals(1, figures.saves().orElseThrow().value(), EXACT);
    }

    @Test
    void mealworm_meal_for_soybean_meal_by_hand_from_the_published_rows() {
        // Thevenot et al. 2018: mealworm meal 3.8 kg CO2e per kg (sd 0.76: median 3.8/√(1 + 0.2²) = 3.73), 65 %
        // protein. Adom et al. 2012: soybean meal
        // 0.41
        // kg CO2e per kg dry matter; USDA SR27: 93.06 % dry matter, 49.2 % protein. 1 000 kg of insect meal hold 650 kg
        // protein, as do 1 321 kg of soybean meal, which cause 0.5041 t; the insect meal causes 3.73 t: 3.22 t more.
        double displaced = 650 / 0.492 * 0.41 * 0.9306 / 1_000;
        Substitution answer = Brought.of(LIBRARY, feed(), "mealworm:meal")
                .insteadOf("soybean-meal")
                .asFeedOf(FedAnimal.POULTRY)
                .answer();
        YearlyChange.Figures figures = answer.changes().get(0).figures().orElseThrow();

        assertEquals(650, answer.displaced().supplied().median(), 10, "kg protein, its spread is assumed");
        assertEquals(
                1_321,
                answer.displaced().parts().get(0).kilograms().orElseThrow().median(),
                30,
                "kg soybean meal");
        assertEquals(3.73, figures.own().median(), 0.15, "t CO2e a year");
        assertEquals(displaced, figures.displaced().median(), 0.05, "t CO2e a year");
        assertEquals(displaced - 3.73, figures.avoided().median(), 0.15, "t CO2e a year");
        assertEquals(0, figures.saves().orElseThrow().value(), 0.05);
    }

    @Test
    void food_that_displaces_nothing_adds_exactly_its_own_footprint() {
        YearlyChange.Figures figures =
                bring("mealworm").insteadOf("beef").rate(0).figures();

        assertEquals(-figures.own().median(), figures.avoided().median(), 0);
        assertEquals(-figures.own().high(), figures.avoided().low(), 1e-12);
        assertEquals(0, figures.displaced().high(), 0);
        assertEquals(0, figures.saves().orElseThrow().value(), 0);
        PublishedEstimate estimate = Estimating.estimate(
                LIBRARY,
                Asked.of(LIBRARY).item("mealworm"),
                Asked.of(LIBRARY).per(FunctionalUnit.KG_PRODUCT).basis(),
                Compared.SAMPLING);
        assertEquals(
                estimate.summary().orElseThrow().median(),
                figures.own().median(),
                0.01 * figures.own().median(),
                "1 000 kg in t");
    }

    @Test
    void the_result_grows_with_the_quantity_and_is_linear_in_the_rate() {
        Random random = new Random(20261125);
        for (int i = 0; i < 5; i++) {
            double kilograms = 1 + random.nextDouble() * 10_000;
            double rate = random.nextDouble();
            Brought one = bring("mealworm").insteadOf("chicken").rate(rate);
            Summary single = one.figures().avoided();
            Summary scaled = one.kilograms(kilograms, FunctionalUnit.KG_PRODUCT)
                    .figures()
                    .avoided();
            assertSame(single.times(kilograms / 1_000), scaled, 1e-9 * kilograms);

            double none = bring("mealworm")
                    .insteadOf("chicken")
                    .rate(0)
                    .figures()
                    .avoided()
                    .mean();
            double all = bring("mealworm")
                    .insteadOf("chicken")
                    .rate(1)
                    .figures()
                    .avoided()
                    .mean();
            assertEquals(none + rate * (all - none), single.mean(), 1e-9, "the mean is linear in the rate");
        }
    }

    @Test
    void product_and_baseline_change_places_and_the_sign_changes() {
        for (String other : List.of("chicken", "beef", "tofu", "pork")) {
            Summary there = bring("mealworm")
                    .kilograms(500, FunctionalUnit.KG_PROTEIN)
                    .insteadOf(other)
                    .figures()
                    .avoided();
            Summary back = bring(other)
                    .kilograms(500, FunctionalUnit.KG_PROTEIN)
                    .insteadOf("mealworm")
                    .figures()
                    .avoided();

            assertEquals(-there.median(), back.median(), EXACT, other);
            assertEquals(-there.low(), back.high(), 1e-8, other);
            assertEquals(-there.mean(), back.mean(), EXACT, other);
        }
    }

    @Test
    void what_displaces_itself_changes_nothing() {
        Summary avoided = bring("mealworm")
                .kilograms(500, FunctionalUnit.KG_PROTEIN)
                .insteadOf("mealworm")
                .figures()
                .avoided();

        assertEquals(0, avoided.low(), EXACT);
        assertEquals(0, avoided.high(), EXACT);
    }

    @Test
    void a_mix_is_the_weighted_mean_of_its_parts() {
        double chicken =
                bring("mealworm").insteadOf("chicken").figures().avoided().mean();
        double beef = bring("mealworm").insteadOf("beef").figures().avoided().mean();
        double mixed = bring("mealworm")
                .insteadOf("chicken", 0.7)
                .insteadOf("beef", 0.3)
                .figures()
                .avoided()
                .mean();

        assertEquals(0.7 * chicken + 0.3 * beef, mixed, EXACT);
    }

    @Test
    void the_three_drivers_are_turned_one_at_a_time() {
        List<Swing> swings = bring("mealworm")
                .insteadOf("chicken", 0.7)
                .insteadOf("beef", 0.3)
                .or("tofu")
                .or("palm-weevil")
                .rate(0.25)
                .figures()
                .swings();

        assertEquals(
                List.of("0", "0.25", "0.5", "1", "chicken", "beef", "tofu", "low end", "high end"),
                swings.stream().map(Swing::setting).toList(),
                "palm weevil has no figure and makes no row");
        assertEquals(
                List.of("0.25"),
                swings.stream().filter(Swing::asAsked).map(Swing::setting).toList());
        for (int i = 1; i < 4; i++) {
            assertTrue(swings.get(i).avoided().median()
                    > swings.get(i - 1).avoided().median());
        }
        Summary ofBeef =
                bring("mealworm").insteadOf("beef").rate(0.25).figures().avoided();
        assertSame(ofBeef, swings.get(5).avoided(), EXACT);
        assertTrue(
                swings.get(7).avoided().median() > swings.get(8).avoided().median(), "a lower footprint avoids more");
    }

    @Test
    void a_price_per_tonne_is_the_cost_over_what_is_avoided_and_only_where_all_of_it_is_avoided() {
        Substitution beef = bring("mealworm").insteadOf("beef").costing(12_000).answer();
        Summary avoided = beef.changes().get(0).figures().orElseThrow().avoided();
        MoneySide.PerTonne perTonne = beef.money().orElseThrow().perTonne().orElseThrow();
        MoneySide chicken = bring("mealworm")
                .insteadOf("chicken")
                .costing(12_000)
                .answer()
                .money()
                .orElseThrow();

        assertEquals(12_000 / avoided.median(), perTonne.median(), EXACT);
        assertEquals(12_000 / avoided.low(), perTonne.high(), EXACT, "the unfavourable end costs most");
        assertTrue(chicken.perTonne().isEmpty());
        assertTrue(chicken.whyNotPerTonne().orElseThrow().english().contains("does not lie above zero"));
    }

    @Test
    void the_import_bill_is_what_is_displaced_at_its_price_for_the_part_that_is_imported() {
        Substitution answer = bring("mealworm")
                .priced("chicken", 0.5, OptionalDouble.of(3), OptionalDouble.of(0.4))
                .insteadOf("egg", 0.5)
                .costing(1)
                .answer();
        MoneySide money = answer.money().orElseThrow();
        Summary kilograms = answer.displaced().parts().get(0).kilograms().orElseThrow();

        assertEquals(3 * kilograms.median(), money.ofDisplaced().orElseThrow().median(), 1e-6);
        assertEquals(
                3 * 0.4 * kilograms.median(), money.imported().orElseThrow().median(), 1e-6);
        assertEquals(List.of("hen's egg"), money.withoutPrice());
    }

    @Test
    void a_product_without_a_figure_is_no_evidence_and_is_named() {
        YearlyChange change =
                bring("palm-weevil").insteadOf("beef").answer().changes().get(0);

        assertTrue(change.figures().isEmpty());
        assertEquals(
                List.of("palm weevil"),
                change.silent().stream().map(DisplayName::english).toList());
        assertTrue(change.missing().orElseThrow().contains("no published ghg result"));
        assertTrue(change.withEvidence().isEmpty());
    }

    @Test
    void where_insect_meal_has_no_figure_that_was_seen_the_study_of_both_is_told_instead() {
        YearlyChange change = Brought.of(LIBRARY, feed().grade(Grade.SECONDARY), "black-soldier-fly:meal")
                .kilograms(1_000, FunctionalUnit.KG_PROTEIN)
                .insteadOf("fishmeal-blue-whiting")
                .asFeedOf(FedAnimal.FISH)
                .answer()
                .changes()
                .get(0);

        assertTrue(change.figures().isEmpty());
        assertTrue(
                SubstitutionSentences.known(change)
                        .get(0)
                        .english()
                        .contains("4.2 times as much as fishmeal of blue whiting"),
                "uk-defra-bsf-lca-2024, larvae on wheat-based feed");
    }

    @Test
    void food_displaces_food_and_feed_displaces_feed() {
        Product mealworm = product("mealworm");
        Product chicken = product("chicken");
        Product soybeanMeal = product("soybean-meal");

        assertEquals(Optional.empty(), Use.FOOD.obstacleToSupply(mealworm));
        assertEquals(Optional.empty(), Use.FEED.obstacleToSupply(mealworm));
        assertEquals(
                Optional.of("chicken is no insect: as feed, insects stand for fishmeal or soybean meal"),
                Use.FEED.obstacleToSupply(chicken));
        assertEquals(
                Optional.of("soybean-meal is feed and no food: ask with as: feed"),
                Use.FOOD.obstacleToSupply(soybeanMeal));
        assertEquals(Optional.empty(), Use.FOOD.obstacleToDisplacement(chicken));
        assertEquals(Optional.empty(), Use.FEED.obstacleToDisplacement(soybeanMeal));
        assertEquals(
                Optional.of("chicken is no feed of this library: as feed, fishmeal or soybean-meal is displaced"),
                Use.FEED.obstacleToDisplacement(chicken));
        for (Use use : Use.values()) {
            assertTrue(
                    use.usualAlternatives().stream()
                            .allMatch(id ->
                                    use.obstacleToDisplacement(product(id)).isEmpty()),
                    use.id());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "FOOD, ghg, , false, FARM_GATE",
        "FOOD, water, , false, RETAIL",
        "FOOD, water, , true, FARM_GATE",
        "FOOD, water, RETAIL, false, RETAIL",
        "FEED, ghg, , false, PROCESSING_GATE",
        "FEED, ghg, FARM_GATE, true, FARM_GATE",
        "FEED, feed, RETAIL, false, ANIMAL"
    })
    void meals_end_at_the_processing_gate_records_at_a_gate_and_feed_at_the_animal(
            Use use, String indicator, @Nullable Boundary asked, boolean recorded, Boundary expected) {
        Indicator of = Objects.requireNonNull(LIBRARY.indicators().get(indicator));
        assertEquals(expected, use.boundary(of, Optional.ofNullable(asked), recorded));
    }

    @Test
    void a_programme_counts_meals_people_and_the_meal_in_a_diet() {
        OptionalDouble none = OptionalDouble.empty();

        assertEquals(6_000, Programme.meals(150, 25), EXACT, "150 kg at 25 g a meal");
        assertEquals(50, Programme.inDiet(1_000, 5), EXACT, "5 % of a tonne of diet");
        assertEquals(
                OptionalDouble.of(70), Programme.beneficiaries(none, OptionalDouble.of(40), OptionalDouble.of(30)));
        assertEquals(
                "beneficiaries",
                Programme.obstacleInBeneficiaries(OptionalDouble.of(50), OptionalDouble.of(40), OptionalDouble.of(30))
                        .orElseThrow()
                        .field());
        assertTrue(Programme.obstacleInBeneficiaries(none, OptionalDouble.of(40), none)
                .isPresent());
        assertTrue(Programme.obstacleInBeneficiaries(OptionalDouble.of(70), OptionalDouble.of(40), none)
                .isEmpty());
    }

    private static Product product(String id) {
        return Objects.requireNonNull(LIBRARY.products().get(id));
    }

    @Test
    void digestible_lysine_is_refused_with_the_factors_that_are_missing() {
        Brought poultry = Brought.of(LIBRARY, feed(), "black-soldier-fly:defatted-meal")
                .insteadOf("soybean-meal")
                .on(EqualBasis.DIGESTIBLE_LYSINE);

        assertEquals(
                List.of(new Obstacle(
                        "on",
                        "this library has no lysine per kg-product and no lysine-digestibility per kg-product of"
                                + " soybean-meal (meal)")),
                poultry.asFeedOf(FedAnimal.POULTRY).question().obstacles(LIBRARY));
        assertTrue(poultry.asFeedOf(FedAnimal.PIG)
                .question()
                .obstacles(LIBRARY)
                .get(0)
                .text()
                .contains("measured in poultry"));
        assertThrows(
                IllegalArgumentException.class,
                () -> Brought.of(LIBRARY, feed(), "black-soldier-fly:meal")
                        .insteadOf("soybean-meal")
                        .answer(),
                "no protein content of the meal");
    }

    @Test
    void digestible_lysine_by_hand_once_the_user_brings_the_missing_rows(@TempDir Path path) {
        // Invented: soybean meal with 2.8 % lysine, nine tenths digested; mealworm meal with 3.5 %, eight tenths
        // digested.
        OwnFolder folder = new OwnFolder(path);
        lysine(folder, "soybean-meal", "0.028", "0.9");
        lysine(folder, "mealworm", "0.035", "0.8");
        Library own = folder.library();
        Substitution answer = Brought.of(own, Asked.of(own).at("processing-gate"), "mealworm:meal")
                .insteadOf("soybean-meal")
                .asFeedOf(FedAnimal.POULTRY)
                .on(EqualBasis.DIGESTIBLE_LYSINE)
                .answer();

        assertEquals(28, answer.displaced().supplied().median(), 0.1, "kg digestible lysine in 1 000 kg");
        assertEquals(
                28 / (0.028 * 0.9),
                answer.displaced().parts().get(0).kilograms().orElseThrow().median(),
                5);
        assertEquals(
                28 / (0.028 * 0.9) * 0.41 * 0.9306 / 1_000,
                answer.changes().get(0).figures().orElseThrow().displaced().median(),
                0.03,
                "t CO2e: soybean meal 0.41 kg CO2e per kg dry matter, Adom et al. 2012");
    }

    private static void lysine(OwnFolder folder, String product, String content, String digested) {
        String model = "bsf-meal-2025.black-soldier-fly.defatted-meal.lysine";
        Map.of("lysine", content, "lysine-digestibility", digested)
                .forEach((quantity, value) -> folder.rowLike(
                        "composition",
                        model,
                        Map.of(
                                "id",
                                "invented." + product + "." + quantity,
                                "product",
                                product,
                                "form",
                                "meal",
                                "quantity",
                                quantity,
                                "spread",
                                "range",
                                "value",
                                "",
                                "low",
                                value,
                                "high",
                                value,
                                "note",
                                "invented")));
    }

    @Test
    void a_farm_from_its_records_can_be_on_either_side() {
        Side farm = new Side.Recorded(
                InsectRecordsFixture.of(LIBRARY, "mealworm", 500)
                        .energy("grid-electricity", 100)
                        .inventory(),
                false);
        YearlyChange.Figures figures = Brought.of(LIBRARY, Asked.of(LIBRARY), farm)
                .kilograms(500, FunctionalUnit.KG_LIVE)
                .insteadOf("beef")
                .figures();

        assertTrue(figures.avoided().low() > 0, "beef is displaced by little more than 100 kWh");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN, Double.POSITIVE_INFINITY})
    void a_displacement_rate_outside_0_to_1_is_refused(double rate) {
        assertThrows(
                IllegalArgumentException.class,
                () -> bring("mealworm").insteadOf("beef").rate(rate).question());
    }

    @Test
    void a_baseline_must_be_whole() {
        assertThrows(
                IllegalArgumentException.class,
                () -> bring("mealworm").insteadOf("beef", 0.5).question());
        assertThrows(IllegalArgumentException.class, () -> Programme.of(0, FunctionalUnit.KG_LIVE));
        assertThrows(IllegalArgumentException.class, () -> Programme.of(Double.NaN, FunctionalUnit.KG_LIVE));
    }

    @Test
    void a_paragraph_claims_no_more_than_the_interval_supports() {
        Substitution beef = bring("mealworm").insteadOf("beef").answer();
        Substitution chicken = bring("mealworm").insteadOf("chicken").answer();
        Substitution nothing = bring("mealworm").insteadOf("beef").rate(0).answer();

        String good = new SubstitutionSentences(beef).paragraph();
        assertTrue(good.contains(" avoided") && good.contains("at least "), good);
        String open = new SubstitutionSentences(chicken).paragraph();
        assertTrue(open.contains("no saving can be claimed") && !open.contains("at least"), open);
        String more = new SubstitutionSentences(nothing).paragraph();
        assertTrue(more.contains("more than without it") && more.contains("that is, nothing"), more);
        for (Substitution each : List.of(beef, chicken, nothing)) {
            SubstitutionSentences sentences = new SubstitutionSentences(each);
            assertTrue(sentences.paragraph().contains("ex ante and unverified, it is not an offset or a credit"));
            assertTrue(sentences.statements().get(1).contains("assumptions of the user"));
        }
        assertFalse(new SubstitutionSentences(beef).statements().toString().contains("comes on top"));
    }

    @Test
    void the_figure_to_quote_is_rounded_against_the_programme() {
        Summary summary = new Summary(30, 30, 11.96, 50, 0.9, 1_000, 0, 0);

        assertEquals(
                "at least 11 t avoided in 95 % of the draws",
                SubstitutionSentences.conservative(summary, "t").english());
        assertEquals(
                "30 (11 to 50) t avoided",
                SubstitutionSentences.avoided(summary, "t").english());
    }

    @Test
    void additional_impact_is_rounded_against_the_programme() {
        Summary either = new Summary(1, 1, -2.34, 5, 0.95, 1_000, 0, 0);
        Summary more = new Summary(-3, -3, -4.41, -1.18, 0.9, 1_000, 0, 0);

        assertEquals(
                "no saving: up to 2.4 t more in 97.5 % of the draws",
                SubstitutionSentences.conservative(either, "t").english());
        assertEquals(
                "anything from 2.4 more to 5.0 less (t), so that no saving can be claimed",
                SubstitutionSentences.avoided(either, "t").english());
        assertEquals(
                "no saving: up to 4.5 t more in 95 % of the draws",
                SubstitutionSentences.conservative(more, "t").english());
        assertEquals(
                "3.0 (1.2 to 4.5) t more than without it",
                SubstitutionSentences.avoided(more, "t").english());
    }
}
