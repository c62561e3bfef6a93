package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.exchange.text.CellNumber;
import org.scalepan.input.Underflow;
import org.scalepan.web.Reply;

/** A number too small for a double is refused; it must not be taken for nothing. */
class UnderflowTest {
    private static final String FARM =
            "{\"system\": {\"kind\": \"insects\", \"product\": \"mealworm\", \"harvest\": {\"kg_per_year\": 500},"
                    + " \"energy\": [{\"carrier\": \"grid-electricity\",\n \"amount\": %s}]}}";

    private static Reply footprint(String amount) {
        return Reply.to("/v1/footprint", Map.of(), Optional.of(FARM.formatted(amount)));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1e-400, true",
        "0, -0.0001e-399, true",
        "0, 0, false",
        "0, 0.000, false",
        "0, -0e5, false",
        "1e-300, 1e-300, false"
    })
    void nought_is_nought_only_if_it_was_written(double read, String written, boolean underflow) {
        assertEquals(underflow, Underflow.happened(read, written));
    }

    @Test
    void in_a_body_it_is_refused_at_its_place() {
        Reply reply = footprint("1e-400");

        assertEquals(400, reply.status());
        assertTrue(JsonAt.text(reply.json(), "/detail").contains("1e-400 at line 2 is too small"), reply.body());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.0", "1e-300", "0e-400"})
    void small_and_nought_as_written_are_taken(String amount) {
        assertEquals(200, footprint(amount).status());
    }

    @Test
    void in_a_query_and_in_a_cell_too() {
        assertEquals(
                400,
                Reply.to("/v1/claim?product=mealworm&reference=beef&times_less=1e-400")
                        .status());
        assertTrue(Double.isNaN(CellNumber.read("1e-400", '.')));
        assertEquals(0, CellNumber.read("0e-400", '.'));
    }
}
