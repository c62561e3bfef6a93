package org.scalepan.production.herd;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.input.Obstacle;

/** Which records of a herd contradict each other. */
class HerdObstaclesTest {
    private static List<Herd.ManureShare> manure(double pasture, double lagoon) {
        return List.of(
                new Herd.ManureShare("mms.pasture", pasture), new Herd.ManureShare("mms.uncovered-lagoon", lagoon));
    }

    @ParameterizedTest
    @ValueSource(strings = {"dairy-cattle", "other-cattle", "buffalo"})
    void tier_2_is_for_cattle_and_buffalo(String category) {
        assertEquals(Optional.empty(), Herd.obstacleToTier2(category));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sheep", "goats", "swine", "layers", "broilers", "ducks"})
    void other_animals_have_no_tier_2(String category) {
        assertEquals("cattle", Herd.obstacleToTier2(category).orElseThrow().field());
    }

    @Test
    void shares_of_manure_systems_add_to_1() {
        assertEquals(Optional.empty(), Herd.obstacleInManure(manure(0.7, 0.3)));
        assertEquals(Optional.empty(), Herd.obstacleInManure(manure(0.1 + 0.2, 0.7)), "rounding is no fault");
        assertEquals(
                Optional.of(new Obstacle(
                        "manure", "the shares of the manure systems add up to 0.95; they must add up to 1")),
                Herd.obstacleInManure(manure(0.7, 0.25)));
        assertTrue(Herd.obstacleInManure(manure(0.7, 0.4)).isPresent());
    }

    @Test
    void manure_may_be_left_open() {
        assertEquals(Optional.empty(), Herd.obstacleInManure(List.of()));
    }
}
