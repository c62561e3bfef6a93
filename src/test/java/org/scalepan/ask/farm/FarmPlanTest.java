package org.scalepan.ask.farm;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.ask.farm.FarmPlan.PlannedAmount;
import org.scalepan.factors.Library;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.practice.ModelledFarms;

/** What a farm needs before it has records. */
class FarmPlanTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static FarmPlan plan(String farm, double harvest) {
        return FarmPlan.of(LIBRARY, farm(farm), harvest);
    }

    private static ModelledFarm farm(String id) {
        return ModelledFarms.of(LIBRARY).find(id).orElseThrow();
    }

    private static PlannedAmount amount(FarmPlan plan, String field) {
        return plan.amounts().stream()
                .filter(one -> one.field().equals(field))
                .findFirst()
                .orElseThrow(() -> new AssertionError(field + " is not planned: " + plan));
    }

    /** Reference farms of insects harvest 1000 kg a year. */
    @Test
    void twice_the_harvest_needs_twice_the_feed() {
        FarmPlan one = plan("mealworm-heated-small-temperate", 250);
        FarmPlan two = plan("mealworm-heated-small-temperate", 500);

        assertAll(one.amounts().stream()
                .filter(amount -> amount.field().startsWith("feed."))
                .map(amount -> () -> assertEquals(
                        2 * amount.high(), amount(two, amount.field()).high(), 1e-9, "kg a year")));
        assertTrue(one.amounts().stream().anyMatch(amount -> amount.field().startsWith("feed.")));
    }

    /** House crickets of 0.418 to 0.443 g at harvest (Nakagaki and DeFoliart 1991): 2 257 to 2 392 to the kilogram. */
    @Test
    void the_animals_of_a_harvest_follow_from_what_one_of_them_weighs() {
        PlannedAmount crickets = amount(plan("house-cricket-ambient-tropical", 100), "harvest.larvae");

        assertEquals(100 * 1000 / 0.443, crickets.low(), 1, "a year");
        assertEquals(100 * 1000 / 0.418, crickets.high(), 1, "a year");
        assertTrue(crickets.rows().contains("nakagaki-defoliart-1991.house-cricket.individual-mass.nrc-chick-diet"));
    }

    @Test
    void what_nobody_has_published_is_said_and_not_planned() {
        FarmPlan plan = plan("sun-beetle-heated-temperate", 100);

        assertTrue(
                plan.open().contains("how many animals make a kilogram"),
                plan.open().toString());
        assertTrue(plan.amounts().stream().noneMatch(amount -> amount.field().equals("harvest.containers")));
    }

    @Test
    void ends_of_an_amount_rise() {
        assertAll(ModelledFarms.of(LIBRARY).all().stream()
                .flatMap(farm -> FarmPlan.of(LIBRARY, farm, 500).amounts().stream()
                        .map(amount -> () -> assertTrue(
                                amount.low() <= amount.middle().orElse(amount.high())
                                        && amount.middle().orElse(amount.high()) <= amount.high(),
                                () -> farm.farm().id() + " " + amount))));
    }
}
