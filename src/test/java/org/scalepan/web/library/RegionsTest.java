package org.scalepan.web.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The regions, each with whether its electricity is counted with a factor of its own. */
class RegionsTest {
    @Test
    void a_region_has_a_grid_of_its_own_where_a_row_of_grid_intensity_names_it() {
        int own = 0;
        for (JsonNode region : Reply.to("/v1/regions").json().path("items")) {
            String id = JsonAt.text(region, "/id");
            boolean held = RunningScalepan.library().background("energy_factors").stream()
                    .filter(row -> row.subject().equals("grid-electricity")
                            && row.quantity().equals("ghg-life-cycle"))
                    .map(BackgroundFactor::region)
                    .anyMatch(place -> place.orElse("world").equals(id));

            assertEquals(held, JsonAt.flag(region, "/own_grid"), id);
            own += held ? 1 : 0;
        }

        assertTrue(own > 30, "countries with a grid row of their own");
    }

    @Test
    void the_table_has_the_column_too() {
        String[] lines = Reply.to("/v1/regions?format=csv").body().split("\r?\n");

        assertTrue(lines[0].endsWith(",own_grid"), lines[0]);
        assertEquals(
                StreamSupport.stream(
                                Reply.to("/v1/regions").json().path("items").spliterator(), false)
                        .count(),
                lines.length - 1);
    }
}
