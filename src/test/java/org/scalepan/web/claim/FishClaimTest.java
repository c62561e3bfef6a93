package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** A fish farm that leaves something required open never wins a claim. The farms are invented. */
class FishClaimTest {
    private static final String FEED = "\"feed\": [{\"ingredient\": \"maize\", \"kg\": 1260}]";
    private static final String ENERGY = "\"energy\": []";
    private static final String STOCKED = "\"stocked\": {\"kg\": 40}";
    private static final String POND = "\"pond\": {\"area_m2\": 1200}";

    private static JsonNode cell(String records) {
        Posted posted = Posted.to("/v1/claim", "application/json", """
                {"system": {"kind": "fish", "name": "invented ponds", "product": "tilapia", "harvest": {"kg_per_year": 900}, %s},
                 "reference": "beef", "indicator": "ghg", "times_less": 1.5}""".formatted(records));
        assertEquals(200, posted.status(), posted.body());
        return posted.tree().path("checks").path(0).path("cells").path(0);
    }

    @Test
    void given_all_that_is_required_then_the_claim_is_decided() {
        JsonNode cell = cell(String.join(", ", FEED, ENERGY, STOCKED, POND));

        assertEquals("exact", JsonAt.text(cell, "/bound"), cell::toString);
        assertEquals("holds", JsonAt.text(cell, "/verdict"), cell::toString);
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource({"feed", "energy", "stocked", "pond"})
    void given_something_left_open_then_no_reduction_holds(String open) {
        String records = String.join(
                ", ",
                Stream.of(FEED, ENERGY, STOCKED, POND)
                        .filter(part -> !part.startsWith("\"" + open + "\""))
                        .toList());

        JsonNode cell = cell(records);

        assertEquals("at-most", JsonAt.text(cell, "/bound"), cell::toString);
        assertEquals("undecided", JsonAt.text(cell, "/verdict"), cell::toString);
        assertFalse(cell.has("share_of_draws"), cell::toString);
    }
}
