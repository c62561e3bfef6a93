package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** Answers in French: no sentence is left in English, and nothing but sentences differs. The records are invented. */
class FrenchAnswersTest {
    /** Words that are English and no French word. */
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(the|of|is|are|was|were|with|from|than|and|which|not|by|this|that|it|its|study|studies|less|more|to)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Set<String> PROSE = Set.of(
            "sentence",
            "text",
            "reason",
            "claim",
            "against_sentence",
            "product_sentence",
            "reference_sentence",
            "filled_with",
            "now",
            "is",
            "name",
            "along",
            "say_instead",
            "not_counted",
            "counted_beyond",
            "contradictions",
            "with_displaced_use",
            "missing",
            "known_instead",
            "assumption",
            "paragraph",
            "statements",
            "no_price_per_tonne",
            "corrections");
    /** What the library says of a reference farm, or a source says, stays in the language it is said in; so does why of a gap of a farm. */
    private static final Set<String> OF_SOURCES =
            Set.of("references", "circulating", "reference_farm", "question", "library", "others", "pattern", "plan");

    private static final String FARM = """
            {"system": {"kind": "insects", "product": "superworm", "name": "trois abris", "region": "peru",
              "harvest": {"containers": 40, "kg_per_container": 1.1, "cycles_per_year": 12},
              "feed": [{"ingredient": "wheat-bran", "kg": 3600, "burden": "mass"},
                       {"ingredient": "kitchen-waste", "kg": 100}],
              "energy": [{"carrier": "grid-electricity", "amount": 150}, {"carrier": "diesel", "amount": 40}],
              "transport": [{"mode": "truck-average", "tonne_km": 90}]%s},
             %s}
            """;

    private record Asked(String path, Optional<String> body) {
        static Asked get(String path) {
            return new Asked(path, Optional.empty());
        }

        static Asked post(String path, String body) {
            return new Asked(path, Optional.of(body));
        }

        Reply in(String language) {
            String to = path + (path.contains("?") ? "&" : "?") + "lang=" + language;
            return Reply.to(to, Map.of(), body);
        }

        @Override
        public String toString() {
            return path
                    + body.map(text -> " " + text.length() + " " + text.hashCode())
                            .orElse("");
        }
    }

    static Stream<Asked> questions() {
        return Stream.of(
                Asked.get(
                        "/v1/comparison?products=mealworm,house-cricket:meal,chicken,palm-weevil&against=beef&draws=2000"),
                Asked.get("/v1/comparison?products=mealworm,chicken&against=beef&indicator=land&draws=2000"),
                Asked.get(
                        "/v1/comparison?products=chicken,milk&against=beef&boundary=retail&region=ethiopia&draws=2000"),
                Asked.get("/v1/comparison?products=chicken,mealworm&against=beef&indicator=energy&of=mean&draws=2000"),
                Asked.get(
                        "/v1/comparison?products=pork&against=beef&boundary=animal&per=kg-live&grade=memory&draws=2000"),
                Asked.get("/v1/comparison?products=mealworm,pork&against=chicken&evidence=modelled&draws=2000"),
                Asked.get("/v1/comparison?products=turkey&against=trout&draws=2000"),
                Asked.get("/v1/claim?product=mealworm&reference=beef&times_less=100&draws=2000"),
                Asked.get("/v1/claim?product=insects&reference=beef&times_less=10&draws=1000"),
                Asked.get("/v1/claim?product=mealworm&reference=beef&percent_less=50&indicator=land&draws=2000"),
                Asked.get("/v1/claim?product=mealworm&none=yes&draws=2000"),
                Asked.get("/v1/cautions"),
                Asked.get("/v1/claim?product=superworm&reference=egg&times_less=1&draws=2000"),
                Asked.get("/v1/claim?product=mealworm&reference=chicken&times_less=5&evidence=modelled&draws=2000"),
                Asked.get("/v1/claim?product=mealworm&reference=egg&times_less=1.1&evidence=modelled&draws=2000"),
                Asked.post(
                        "/v1/claim",
                        FARM.formatted("", "\"reference\": \"chicken\", \"times_less\": 2, \"draws\": 2000")),
                Asked.post(
                        "/v1/footprint",
                        FARM.formatted(
                                ", \"form\": \"meal\", \"sold_kg\": 120",
                                "\"compare\": {\"products\": [\"chicken\", \"beef\"], \"reference_farms\": []}, \"draws\": 2000")),
                Asked.post("/v1/footprint", """
                        {"system": {"kind": "herd", "name": "dix poules", "animals": "layers", "heads": 10, "region": "peru",
                          "yield": {"eggs_kg": 40, "live_kg": 6}, "feed": [{"ingredient": "maize", "kg": 150}]},
                         "draws": 2000}
                        """),
                Asked.post("/v1/footprint", """
                        {"system": {"kind": "herd", "name": "quatre vaches", "animals": "dairy-cattle", "heads": 4,
                          "yield": {"milk_kg": 9000, "live_kg": 300}, "feed": [{"ingredient": "maize", "kg": 1500}]},
                         "indicators": ["ghg", "land", "energy", "water"], "draws": 2000}
                        """),
                Asked.post(
                        "/v1/break-even",
                        FARM.formatted("", "\"against\": \"chicken\", \"input\": \"feed\", \"draws\": 2000")),
                Asked.get("/v1/claim?product=mealworm&reference=beef&content=iron&times_more=2"),
                Asked.get("/v1/claim?product=house-cricket&reference=beef&content=protein"),
                Asked.get("/v1/claim?product=mealworm&content=amino-acids"),
                Asked.get("/v1/claim?product=insects&reference=beef&content=vitamin-b12"),
                Asked.get("/v1/claim?product=mealworm&reference=chicken&content=protein-quality"),
                Asked.get("/v1/claim?product=mealworm&content=complete-protein"),
                Asked.get("/v1/claim?product=mealworm&reference=beef&content=unsaturated-fat"),
                Asked.get("/v1/nutrition?products=mealworm,house-cricket:dried,beef,palm-weevil&basis=100g-dry-matter"),
                Asked.get("/v1/nutrition?products=beef,mealworm&protein=corrected&grade=memory"),
                Asked.post("/v1/substitution", """
                        {"product": "mealworm", "kg_per_year": 12000, "unit": "kg-live",
                         "baseline": [{"product": "chicken", "share": 0.7, "price_per_kg": 4.2, "imported_share": 0.4},
                           {"product": "pulses"}],
                         "displacement_rate": 0.5, "indicators": ["ghg", "land", "water"], "alternatives": ["beef"],
                         "households": 400, "beneficiaries": 900, "women": 500, "men": 400, "years": 3,
                         "cost_per_year": 30000, "currency": "EUR", "draws": 2000}
                        """),
                Asked.post("/v1/substitution", """
                        {"as": "feed", "animal": "poultry", "product": "mealworm:meal", "inclusion_percent": 10,
                         "feed_kg_per_year": 50000, "baseline": [{"product": "soybean-meal"}], "displacement_rate": 0,
                         "indicators": ["ghg", "energy"], "draws": 2000}
                        """),
                Asked.post(
                        "/v1/break-even",
                        FARM.formatted("", "\"against\": \"beef\", \"input\": \"transport\", \"draws\": 2000")));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void no_sentence_is_left_in_english(Asked question) {
        Reply french = question.in("fr");

        assertEquals(200, french.status(), french::body);
        assertEquals(Optional.of("fr"), french.header("Content-Language"));
        List<String> english = new ArrayList<>();
        prose("", french.json(), english);
        assertEquals(List.of(), english.stream().distinct().limit(12).toList());
    }

    @ParameterizedTest
    @MethodSource("questions")
    void nothing_but_sentences_differs(Asked question) {
        Reply english = question.in("en");
        List<String> different = new ArrayList<>();

        compare("", english.json(), question.in("fr").json(), different);

        assertEquals(Optional.of("en"), english.header("Content-Language"));
        assertEquals(List.of(), different);
    }

    @Test
    void french_is_asked_for_by_lang_and_stays_in_the_permalink() {
        String path = "/v1/comparison?products=mealworm&against=beef&draws=1000";

        Reply english = Reply.to(path);
        Reply french = Reply.to(path + "&lang=fr");

        assertEquals(english.body(), Reply.to(path + "&lang=en").body());
        assertFalse(JsonAt.text(english.json(), "/permalink").contains("lang="));
        assertTrue(JsonAt.text(french.json(), "/permalink").contains("lang=fr"));
        assertNotEquals(english.header("ETag"), french.header("ETag"));
        assertEquals(
                french.body(),
                Reply.to(JsonAt.text(french.json(), "/permalink")).body());
    }

    @Test
    void a_cached_answer_keeps_its_language() {
        String path = "/v1/comparison?products=chicken&against=beef&draws=1000";

        Reply.to(path + "&lang=fr");
        Reply.to(path);
        Reply again = Reply.to(path + "&lang=fr");

        assertEquals(Optional.of("fr"), again.header("Content-Language"));
        assertTrue(JsonAt.text(again.json(), "/items/0/sentence").startsWith("Poulet, jusqu’à la sortie de la ferme"));
    }

    @Test
    void numbers_in_sentences_have_a_decimal_comma() {
        JsonNode answer = Reply.to("/v1/comparison?products=mealworm&against=beef&draws=2000&lang=fr")
                .json();

        assertTrue(JsonAt.text(answer, "/items/0/times_less/text")
                .matches("\\d+(,\\d+)? \\(\\d+(,\\d+)? à \\d+(,\\d+)?\\)"));
        assertFalse(JsonAt.text(answer, "/items/0/against_sentence").matches(".*\\d\\.\\d.*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lang=de", "lang=french"})
    void another_language_is_refused_with_those_known(String lang) {
        Reply refused = Reply.to("/v1/comparison?products=mealworm&against=beef&" + lang);

        assertEquals(400, refused.status());
        assertTrue(refused.body().contains("\"en\"") && refused.body().contains("\"fr\""), refused::body);
    }

    @Test
    void a_document_is_in_english_and_says_so() {
        Reply document = Reply.to("/v1/comparison?products=mealworm&against=beef&draws=1000&format=md&lang=fr");

        assertEquals(Optional.of("en"), document.header("Content-Language"));
    }

    /** Collects English sentences under fields of prose. */
    private static void prose(String at, JsonNode node, List<String> english) {
        node.fields().forEachRemaining(field -> {
            String place = at + "/" + field.getKey();
            if (OF_SOURCES.contains(field.getKey())) {
                return;
            }
            if (PROSE.contains(field.getKey())) {
                texts(field.getValue())
                        .filter(text -> isEnglish(text))
                        .forEach(text -> english.add(place + ": " + text));
            }
            prose(place, field.getValue(), english);
        });
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                prose(at + "/" + i, node.get(i), english);
            }
        }
    }

    private static Stream<String> texts(JsonNode node) {
        if (node.isTextual()) {
            return Stream.of(JsonAt.text(node, ""));
        }
        List<String> texts = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(one -> {
                if (one.isTextual()) {
                    texts.add(JsonAt.text(one, ""));
                }
            });
        }
        return texts.stream();
    }

    private static boolean isEnglish(String text) {
        String prose = text.replaceAll("[\\w-]+=[\\w-]*", " ")
                .replaceAll("[\\w-]+[_/.-][\\w-]+", " ")
                .replace("in vitro", " ");
        return ENGLISH.matcher(prose).find();
    }

    /** Collects what differs besides texts: fields, kinds, numbers, and the length of lists. */
    private static void compare(String at, JsonNode one, JsonNode other, List<String> different) {
        if (one.getNodeType() != other.getNodeType() || one.size() != other.size()) {
            if (!at.equals("/question")) {
                different.add(at);
                return;
            }
        }
        if (one.isNumber() && !one.equals(other)) {
            different.add(at);
        }
        one.fields()
                .forEachRemaining(field ->
                        compare(at + "/" + field.getKey(), field.getValue(), other.path(field.getKey()), different));
        for (int i = 0; one.isArray() && i < one.size(); i++) {
            compare(at + "/" + i, one.get(i), other.get(i), different);
        }
    }
}
