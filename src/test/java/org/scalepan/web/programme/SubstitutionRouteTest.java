package org.scalepan.web.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.RecordsSent;
import org.scalepan.web.Reply;
import org.scalepan.web.server.DescribedSchemas;
import org.scalepan.web.server.Description;

/** Tonnes avoided per year; all programmes are invented. */
class SubstitutionRouteTest {
    private static final String PATH = "/v1/substitution";
    private static final String MEALS = """
            {"product": "mealworm", "kg_per_year": 12000, "unit": "kg-live", "displacement_rate": 0.5, "years": 5,
             "baseline": [{"product": "chicken", "share": 0.7, "unit": "kg-edible", "price_per_kg": 4.2,
               "imported_share": 0.4, "currency": "EUR"}, {"product": "pulses"}],
             "alternatives": ["beef"], "indicators": ["ghg", "water"], "households": 400, "beneficiaries": 1800,
             "women": 900, "men": 700, "grams_per_meal": 50, "price_per_kg": 9, "cost_per_year": 30000,
             "currency": "EUR", "on": "kg-protein", "as": "food", "credit": "no", "boundary": "farm-gate",
             "luc": "exclude", "gwp": "ar6-100", "region": "world", "grade": "memory", "protein": "crude",
             "quality": "capped", "strict": "no", "of": "mean", "coverage": 0.8, "draws": 1000, "seed": 2}
            """;
    private static final String FARM = """
            {"system": {"kind": "insects", "product": "palm-weevil", "name": "bins", "harvest": {"kg_per_year": 500},
               "feed": [{"ingredient": "wheat-bran", "kg": 900, "burden": "mass"}], "energy": []},
             "kg_per_year": 500, "unit": "kg-live", "displacement_rate": 0.8, "meals_per_year": 9000, "draws": 1000,
             "baseline": [{"system": {"kind": "herd", "name": "hens", "animals": "layers", "heads": 10, "breeding_stock": "included",
               "yield": {"eggs_kg": 40}}, "share": 0.5}, {"product": "beef"}]}
            """;
    private static final String TROUGH = """
            {"as": "feed", "animal": "poultry", "product": "mealworm:meal", "inclusion_percent": 10,
             "feed_kg_per_year": 50000, "baseline": [{"product": "soybean-meal"}], "displacement_rate": 1, "draws": 1000}
            """;
    private static final String FISHMEAL = """
            {"as": "feed", "animal": "fish", "product": "black-soldier-fly:meal", "kg_per_year": 100, "unit": "kg-protein",
             "baseline": [{"product": "fishmeal-blue-whiting"}], "displacement_rate": 1, "draws": 1000, "grade": "secondary"}
            """;
    private static final String FEW = """
            {"product": "mealworm", "kg_per_year": 1000, "baseline": [{"product": "beef"}], "displacement_rate": 1}
            """;

    static List<String> questions() {
        return List.of(MEALS, FARM, TROUGH, FISHMEAL, FEW);
    }

    private static Reply ask(String body) {
        return Reply.to(PATH, Map.of(), Optional.of(body));
    }

    private static JsonNode answer(String body) {
        Reply reply = ask(body);
        assertEquals(200, reply.status(), reply::body);
        return reply.json();
    }

    private static List<String> pointers(String body) {
        Reply reply = ask(body);
        assertEquals(400, reply.status(), reply::body);
        return pointers(reply);
    }

    private static List<String> pointers(Reply reply) {
        List<String> pointers = new ArrayList<>();
        reply.json().path("errors").forEach(error -> pointers.add(JsonAt.text(error, "/pointer")));
        return pointers;
    }

    /** The shortest question with some fields replaced; null removes one. */
    private static String few(String changes) {
        ObjectNode body = RecordsSent.read(FEW);
        RecordsSent.read(changes).properties().forEach(field -> {
            if (field.getValue().isNull()) {
                body.remove(field.getKey());
            } else {
                body.set(field.getKey(), field.getValue());
            }
        });
        return body.toString();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void the_answer_conforms_to_its_schema_and_the_question_is_as_described(String body) {
        DescribedSchemas schemas = new DescribedSchemas(Description.read());

        assertEquals(
                List.of(),
                schemas.faults(JsonPointer.compile("/components/schemas/SubstitutionRequest"), RecordsSent.read(body)));
        assertEquals(
                List.of(), schemas.faults(JsonPointer.compile("/components/schemas/SubstitutionAnswer"), answer(body)));
    }

    @Test
    void every_field_described_is_used_by_a_question_that_is_answered() {
        Map<String, Description.Part> schemas = Description.read().schemas();
        Set<String> described = new TreeSet<>(schemas.get("SubstitutionRequest")
                .child("properties")
                .children()
                .keySet());
        Set<String> ofBaseline = new TreeSet<>(
                schemas.get("Displaced").child("properties").children().keySet());
        questions().forEach(text -> {
            JsonNode body = RecordsSent.read(text);
            body.fieldNames().forEachRemaining(described::remove);
            body.path("baseline").forEach(entry -> entry.fieldNames().forEachRemaining(ofBaseline::remove));
        });

        assertEquals(Set.of(), described);
        assertEquals(Set.of(), ofBaseline);
    }

    @Test
    void a_described_default_is_that_of_the_service() {
        Map<String, Description.Part> schemas = Description.read().schemas();
        JsonNode question = answer(FEW).path("question");

        schemas.get("SubstitutionRequest").child("properties").children().forEach((name, field) -> {
            JsonNode byDefault = field.node().path("default");
            if (!byDefault.isMissingNode()) {
                assertEquals(
                        byDefault.toString(), JsonAt.node(question, "/" + name).toString(), name);
            }
        });
    }

    @Test
    void a_programme_is_reported_per_year_household_beneficiary_and_meal_and_over_its_years() {
        JsonNode ghg = answer(MEALS).path("indicators").path(0);
        double tonnes = JsonAt.number(ghg, "/avoided/median");

        assertEquals("t CO2e a year", JsonAt.text(ghg, "/unit"));
        assertEquals(tonnes * 1_000 / 400, JsonAt.number(ghg, "/per_household/median"), 1e-3);
        assertEquals(tonnes * 1_000 / 1_800, JsonAt.number(ghg, "/per_beneficiary/median"), 1e-3);
        assertEquals(tonnes * 1_000 / 240_000, JsonAt.number(ghg, "/per_meal/median"), 1e-5, "50 g of 12 t");
        assertEquals(tonnes * 5, JsonAt.number(ghg, "/over_the_years/median"), 1e-3);
        assertEquals(
                JsonAt.number(ghg, "/avoided/low"),
                JsonAt.number(ghg, "/conservative/value"),
                0,
                "the unfavourable end is to be quoted");
        assertEquals(
                "no-evidence", JsonAt.text(answer(MEALS), "/indicators/1/status"), "water withdrawn for mealworms");
    }

    @Test
    void the_answer_states_that_it_is_ex_ante_unverified_and_no_offset() {
        JsonNode answer = answer(FEW);
        String said = answer.path("statements").toString();

        assertTrue(said.contains("ex ante") && said.contains("has not been verified"), said);
        assertTrue(said.contains("not an offset and not a credit"), said);
        assertTrue(said.contains("assumptions of the user"), said);
        assertTrue(said.contains("Breath CO2"), said);
        assertFalse(answer.has("permalink"));
        assertTrue(answer.path("cautions").toString().contains("allergy"));
    }

    @Test
    void as_feed_the_answer_names_feed_law_and_the_limits_of_crude_protein() {
        JsonNode answer = answer(TROUGH);

        assertEquals(5_000, JsonAt.number(answer, "/programme/kg_per_year"), 1e-9, "10 % of 50 t");
        assertTrue(answer.path("cautions").toString().contains("insects-as-feed"));
        assertTrue(answer.path("statements").toString().contains("crude protein is not equal growth"));
        assertTrue(JsonAt.number(answer, "/indicators/0/avoided/high") < 0, "soy is far less");
    }

    @Test
    void without_evidence_on_fishmeal_the_ratio_of_one_study_is_reported() {
        JsonNode ghg = answer(FISHMEAL).path("indicators").path(0);

        assertEquals("no-evidence", JsonAt.text(ghg, "/status"));
        assertTrue(JsonAt.text(ghg, "/known_instead/0").contains("uk-defra-bsf-lca-2024"));
    }

    @Test
    void money_is_arithmetic_in_one_currency() {
        JsonNode money = answer(MEALS).path("money");
        JsonNode beef =
                answer(few("{\"cost_per_year\": 5000, \"currency\": \"KES\"}")).path("money");

        assertEquals(9 * 12_000, JsonAt.number(money, "/value_of_product"), 1e-6);
        assertEquals(
                0.4 * JsonAt.number(money, "/value_of_displaced/median"),
                JsonAt.number(money, "/import_bill_avoided/median"),
                1e-2);
        assertEquals("pulse", JsonAt.text(money, "/without_price/0"));
        assertTrue(JsonAt.text(money, "/no_price_per_tonne").contains("does not lie above zero"));
        assertEquals("KES per t CO2e", JsonAt.text(beef, "/per_tonne_avoided/unit"));
        assertTrue(JsonAt.number(beef, "/per_tonne_avoided/low") < JsonAt.number(beef, "/per_tonne_avoided/high"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "{'displacement_rate': null} | /displacement_rate",
                "{'displacement_rate': 1.01} | /displacement_rate",
                "{'displacement_rate': -0.1} | /displacement_rate",
                "{'kg_per_year': 0} | /kg_per_year",
                "{'kg_per_year': null} | /kg_per_year",
                "{'baseline': null} | /baseline",
                "{'baseline': []} | /baseline",
                "{'baseline': [{'product': 'beef', 'share': 0.5}]} | /baseline",
                "{'baseline': [{'product': 'beef'}, {'product': 'pork'}]} | /baseline",
                "{'baseline': [{'product': 'beeef'}]} | /baseline/0/product",
                "{'baseline': [{'product': 'fishmeal'}]} | /baseline/0/product",
                "{'baseline': [{}]} | /baseline/0/product",
                "{'baseline': [{'product': 'beef', 'imported_share': 0.5}]} | /baseline/0/price_per_kg",
                "{'baseline': [{'product': 'beef', 'price_per_kg': 5}]} | /currency",
                "{'cost_per_year': 5} | /currency",
                "{'cost_per_year': 5, 'currency': 'euro'} | /currency",
                "{'cost_per_year': 5, 'currency': 'EUR USD'} | /currency",
                "{'product': 'soybean-meal'} | /product",
                "{'animal': 'fish'} | /animal",
                "{'as': 'feed', 'baseline': [{'product': 'soybean-meal'}]} | /animal",
                "{'as': 'feed', 'animal': 'fish'} | /baseline/0/product",
                "{'per': 'kg-live'} | /per",
                "{'on': 'kg-digestible-lysine'} | /on",
                "{'boundary': 'animal'} | /boundary",
                "{'women': 5, 'men': 6, 'beneficiaries': 10} | /beneficiaries",
                "{'women': 5} | /beneficiaries",
                "{'meals_per_year': 5, 'grams_per_meal': 10} | /grams_per_meal",
                "{'alternatives': ['fishmeal']} | /alternatives",
                "{'indicators': ['carbon']} | /indicators",
                "{'inclusion_percent': 10} | /inclusion_percent"
            })
    void errors_are_reported_with_their_pointers(String changes, String pointer) {
        List<String> pointers = pointers(few(changes.replace('\'', '"')));

        assertTrue(pointers.contains(pointer), () -> changes + " is refused at " + pointers);
    }

    @Test
    void too_many_draws_for_the_number_of_indicators_exceed_a_limit() {
        Reply reply = ask(few("{\"draws\": 200000, \"indicators\": [\"ghg\", \"land\", \"energy\"]}"));

        assertEquals(422, reply.status(), reply::body);
        assertEquals(List.of("/draws"), pointers(reply));
    }

    @Test
    void two_currencies_are_not_converted() {
        List<String> pointers = pointers(few("""
                {"currency": "EUR", "baseline": [{"product": "beef", "price_per_kg": 5, "currency": "USD"}]}
                """));

        assertEquals(List.of("/baseline/0/currency"), pointers);
    }

    @Test
    void a_missing_content_is_named() {
        Reply reply = ask("""
                {"as": "feed", "animal": "poultry", "product": "black-soldier-fly:defatted-meal", "kg_per_year": 5,
                 "on": "kg-digestible-lysine", "baseline": [{"product": "soybean-meal"}], "displacement_rate": 1}
                """);

        assertEquals(400, reply.status());
        assertTrue(reply.body().contains("no lysine per kg-product"), reply::body);
    }

    @ParameterizedTest
    @ValueSource(strings = {"?format=md", ""})
    void markdown_is_given_by_format_or_by_the_accept_header(String query) {
        Map<String, String> headers = query.isEmpty() ? Map.of("Accept", "text/markdown") : Map.of();
        Reply reply = Reply.to(PATH + query, headers, Optional.of(MEALS));

        assertEquals("text/markdown", reply.mediaType());
        assertTrue(reply.body().startsWith("12000 kg a year of yellow mealworm"), reply::body);
        assertTrue(reply.body().contains("| displacement rate 0.5 (as asked) |"), reply::body);
        assertTrue(reply.body().contains("\nReferences\n"), reply::body);
    }

    @Test
    void the_largest_and_the_smallest_programme_have_finite_ordered_intervals() {
        for (String kilograms : List.of("1.0e-6", "1.0e12")) {
            JsonNode avoided = answer(few("{\"kg_per_year\": " + kilograms + "}"))
                    .path("indicators")
                    .path(0)
                    .path("avoided");
            assertTrue(JsonAt.number(avoided, "/low") < JsonAt.number(avoided, "/high"), avoided::toString);
        }
    }

    @Test
    void the_same_question_has_the_same_bytes() {
        assertEquals(ask(MEALS).body(), ask(MEALS).body());
    }
}
