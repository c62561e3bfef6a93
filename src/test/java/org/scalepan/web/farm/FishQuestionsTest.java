package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.ask.farm.FarmPlan;
import org.scalepan.ask.farm.FarmPlan.PlannedAmount;
import org.scalepan.factors.Library;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.web.Posted;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The other questions to a fish farm: what a plan of one needs, what is written down, and at which area of water it breaks even. */
class FishQuestionsTest {
    private static final String ID = "tilapia-pond-tropical";
    private static final Library LIBRARY = RunningScalepan.library();

    /** The reference farm harvests 1000 kg on 261 to 438.5 m2: 200 kg need a fifth, 52.2 to 87.7 m2. */
    @Test
    void given_a_harvest_wished_for_then_the_plan_has_the_water_and_the_fingerlings() {
        FarmPlan plan = FarmPlan.of(LIBRARY, ModelledFarms.of(LIBRARY).find(ID).orElseThrow(), 200);

        PlannedAmount water = plan.amounts().stream()
                .filter(amount -> amount.field().equals("pond.area_m2"))
                .findFirst()
                .orElseThrow();
        assertEquals(52.2, water.low(), 1e-9);
        assertEquals(87.7, water.high(), 1e-9);
        assertTrue(plan.amounts().stream().anyMatch(amount -> amount.field().equals("stocked.kg")));
        assertTrue(plan.amounts().stream().noneMatch(amount -> amount.field().contains("larvae")));
    }

    @Test
    void the_recording_sheet_asks_what_is_put_into_the_water() {
        String sheet = Reply.to("/v1/recording-sheets/" + ID).body();

        assertTrue(sheet.contains("put in, fish and kg"), sheet);
        assertTrue(sheet.contains("the area of water in m2"), sheet);
    }

    /** More water gives off more methane, so that some area makes an invented pond equal to chicken. */
    @Test
    void the_area_of_water_can_be_what_breaks_even() {
        JsonNode answer = Posted.to("/v1/break-even", "application/json", """
                {"input": "pond", "against": "chicken", "indicator": "ghg", "per": "kg-protein", "draws": 2000,
                 "system": {"kind": "fish", "name": "invented ponds", "product": "tilapia", "harvest": {"kg_per_year": 900},
                   "stocked": {"kg": 40}, "pond": {"area_m2": 400}, "energy": [],
                   "feed": [{"ingredient": "maize", "kg": 1260}]}}""").tree();

        assertEquals("pond", JsonAt.text(answer, "/question/input"), answer::toString);
        assertTrue(JsonAt.text(answer, "/sentence").contains("if the area of water were"), answer::toString);
    }
}
