package org.scalepan.web.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** What people take up of iron and zinc is shown as a trial measured it, and never made into a content or advice. */
class AbsorptionTest {
    private static final JsonNode ANSWER = Reply.to(
                    "/v1/nutrition?products=house-cricket:dried,beef&basis=100g-dry-matter")
            .json();

    private static List<JsonNode> trials(int food) {
        return StreamSupport.stream(
                        ANSWER.path("items").path(food).path("absorption").spliterator(), false)
                .toList();
    }

    @Test
    void a_trial_is_shown_with_its_meal_its_people_and_its_source() {
        JsonNode iron = trials(0).stream()
                .filter(trial -> JsonAt.text(trial, "/row").equals("mwangi-2022.house-cricket.iron.absorption"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.0306, JsonAt.number(iron, "/value"), "part of the iron of the crickets");
        assertEquals("iron of the crickets, refined maize porridge", JsonAt.text(iron, "/meal"));
        assertTrue(JsonAt.text(iron, "/people").contains("20 women"));
        assertTrue(ANSWER.path("references").toString().contains("mwangi-2022"));
    }

    @Test
    void the_reference_meal_of_the_same_trial_stands_beside_it() {
        JsonNode porridge = trials(0).stream()
                .filter(trial -> JsonAt.flag(trial, "/reference")
                        && JsonAt.text(trial, "/nutrient").equals("iron"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.142, JsonAt.number(porridge, "/value"), "part of iron sulfate, without crickets");
    }

    @Test
    void of_a_food_without_a_trial_nothing_is_borrowed() {
        assertEquals(List.of(), trials(1), "no trial of beef is held");
    }

    @Test
    void every_food_with_iron_or_zinc_is_warned_about_and_nobody_is_advised() {
        JsonNode warning = StreamSupport.stream(ANSWER.path("warnings").spliterator(), false)
                .filter(one -> JsonAt.text(one, "/code").equals("minerals-eaten"))
                .findFirst()
                .orElseThrow();
        assertEquals("[\"house-cricket:dried\",\"beef\"]", warning.path("about").toString());
        assertTrue(JsonAt.text(warning, "/text").endsWith("this is no advice."));
    }
}
