package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The method is that of the request line, whether the answer was kept before or not. */
class MethodAsSentTest {
    private static final String OVERRIDE = "X-HTTP-Method-Override";

    @ParameterizedTest
    @ValueSource(strings = {"OPTIONS", "POST", "DELETE", "HEAD", "nonsense"})
    void a_get_with_another_method_in_a_header_is_a_get(String method) {
        for (String question : new String[] {"/v1/value/ghg/mealworm?seed=77", "/v1/products", "/health/live"}) {
            for (int time = 0; time < 2; time++) {
                Reply reply = Reply.to(question, Map.of(OVERRIDE, method));

                assertEquals(200, reply.status(), question);
                assertEquals(Reply.to(question).header("ETag"), reply.header("ETag"));
            }
        }
    }

    @Test
    void a_delete_stays_one_whatever_a_header_says() {
        RunningScalepan.given()
                .header(OVERRIDE, "GET")
                .delete("/v1/value/ghg/mealworm?seed=78")
                .then()
                .statusCode(405)
                .header("Cache-Control", "no-store");
    }

    @Test
    void no_cache_keeps_an_empty_answer_to_options() {
        RunningScalepan.given().options("/v1/products").then().header("Cache-Control", "no-store");
    }
}
