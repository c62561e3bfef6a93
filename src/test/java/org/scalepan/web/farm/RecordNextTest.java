package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** A farm is told what to record next: first what its figure leaves out, then the defaults by the part of the figure that rests on them. */
class RecordNextTest {
    private static final String SHED = """
            {"kind": "insects", "product": "mealworm", "name": "invented shed", "region": "peru", "harvest": {"kg_per_year": 160}%s}""";

    private static JsonNode next(String records) {
        JsonNode answer = Posted.answer("{\"system\": " + SHED.formatted(records) + ", \"indicators\": [\"ghg\"]}");
        return JsonAt.node(answer, "/footprints/0/record_next");
    }

    @Test
    void a_farm_without_feed_and_energy_is_told_to_record_those_first() {
        JsonNode next = next("");

        assertEquals("feed", JsonAt.text(next, "/0/field"));
        assertEquals("not-counted", JsonAt.text(next, "/0/kind"));
        assertEquals("energy", JsonAt.text(next, "/1/field"));
        assertFalse(JsonAt.node(next, "/0").has("share"), "nobody knows the share of what is not counted");
    }

    @Test
    void defaults_stand_in_the_order_of_the_part_of_the_figure_that_rests_on_them() {
        JsonNode next = next("""
                , "feed": [{"ingredient": "wheat-bran", "kg": 400, "burden": "economic"}],
                "energy": [{"carrier": "grid-electricity", "amount": 60}], "building_m2": 12, "water_m3": 1""");

        List<Double> shares = new ArrayList<>();
        next.forEach(one -> {
            if (JsonAt.text(one, "/kind").equals("filled")) {
                shares.add(JsonAt.number(one, "/share"));
            }
        });
        assertFalse(shares.isEmpty(), next::toString);
        for (int i = 0; i < shares.size(); i++) {
            assertTrue(shares.get(i) > 0 && shares.get(i) <= 1, next::toString);
            assertTrue(i == 0 || shares.get(i - 1) >= shares.get(i), next::toString);
        }
    }

    @Test
    void rows_in_bulk_have_it_where_detail_is_asked_for() {
        String farm = SHED.formatted("").replace("\n", "");
        String plain = Posted.to("/v1/footprints?indicators=ghg", "application/x-ndjson", farm)
                .body();
        Posted detailed = Posted.to("/v1/footprints?indicators=ghg&detail=yes", "application/x-ndjson", farm);

        assertEquals("feed", JsonAt.text(detailed.tree(), "/footprints/0/record_next/0/field"));
        assertFalse(plain.contains("record_next"), plain);
    }
}
