package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.production.records.SystemReading;
import org.scalepan.web.RecordsSent;
import org.scalepan.web.Reply;
import org.scalepan.web.server.DescribedSchemas;
import org.scalepan.web.server.Description;

/**
 * Compares the schemas of records with the service's reading of them, field by field: valid records are changed in one place, and schema
 * and service must agree on the change.
 */
class RecordsContractTest {
    private static final String PATH = "/v1/footprint";
    private static final JsonPointer PROBLEM = JsonPointer.compile("/components/schemas/Problem");

    private static Description description;
    private static DescribedSchemas schemas;
    private static Description.Part top;

    @BeforeAll
    static void read() {
        description = Description.read();
        schemas = new DescribedSchemas(description);
        top = description.operations().stream()
                .filter(operation -> operation.path().equals(PATH))
                .map(description::bodySchema)
                .findFirst()
                .orElseThrow();
    }

    /** Invented records that together use every field; not necessarily plausible. */
    static List<ObjectNode> records() {
        return RecordsSent.all();
    }

    /** A value of the records, its pointer and its schema. */
    private record Place(JsonPointer at, JsonNode value, Description.Part schema) {
        String name() {
            return at.last().getMatchingProperty();
        }

        JsonPointer parent() {
            return at.head();
        }
    }

    private static List<Place> places(ObjectNode records) {
        List<Place> places = new ArrayList<>();
        walk(new Place(JsonPointer.empty(), records, top), places);
        return places;
    }

    private static void walk(Place place, List<Place> found) {
        Description.Part schema = Description.isRecordedNumber(place.schema().node())
                ? place.schema()
                : chosen(description.resolve(place.schema()), place.value());
        found.add(new Place(place.at(), place.value(), schema));
        if (place.value().isObject()) {
            place.value().properties().forEach(field -> {
                Description.Part inner = schema.child("properties").child(field.getKey());
                JsonPointer at = place.at().appendProperty(field.getKey());
                assertTrue(!inner.node().isMissingNode(), () -> at + " is not described");
                walk(new Place(at, field.getValue(), inner), found);
            });
        }
        for (int i = 0; place.value().isArray() && i < place.value().size(); i++) {
            walk(new Place(place.at().appendIndex(i), place.value().path(i), schema.child("items")), found);
        }
    }

    /** Of alternative schemas the one that has all the fields. */
    private static Description.Part chosen(Description.Part schema, JsonNode value) {
        if (!schema.node().has("oneOf") || schema.node().has("properties")) {
            return schema;
        }
        for (int i = 0; i < schema.node().path("oneOf").size(); i++) {
            JsonPointer at = schema.at().append(JsonPointer.compile("/oneOf/" + i));
            Description.Part one = description.resolve(
                    new Description.Part(at, schema.node().path("oneOf").path(i)));
            Set<String> known = one.child("properties").children().keySet();
            JsonNode kind = one.node().path("properties").path("kind").path("const");
            boolean sameKind = kind.isMissingNode() || kind.equals(value.path("kind"));
            List<String> used = new ArrayList<>();
            value.fieldNames().forEachRemaining(used::add);
            if (sameKind && known.containsAll(used)) {
                return one;
            }
        }
        throw new AssertionError("no description of " + schema.at() + " fits " + value);
    }

    @Test
    void every_described_field_is_accepted_in_a_real_request() {
        Set<String> used = new TreeSet<>();
        Map<String, Description.Part> objects = new TreeMap<>();
        for (ObjectNode records : records()) {
            Reply reply = Reply.to(PATH, records);
            assertEquals(200, reply.status(), () -> records + " is answered with " + reply.body());
            for (Place place : places(records)) {
                used.add(place.schema().at().toString());
                if (place.value().isObject()) {
                    objects.put(place.schema().at().toString(), place.schema());
                    place.value()
                            .fieldNames()
                            .forEachRemaining(name -> used.add(place.schema().at() + " " + name));
                }
            }
        }
        Set<String> described = new TreeSet<>();
        objects.forEach((at, schema) ->
                schema.child("properties").children().keySet().forEach(name -> described.add(at + " " + name)));
        described.removeAll(used);
        assertEquals(Set.of(), described, "fields that no request uses");
        for (String name : List.of(
                "InsectFarm",
                "Herd",
                "HarvestWeighed",
                "HarvestByContainer",
                "HarvestByNumber",
                "HarvestByPairs",
                "OwnInsect",
                "FishFarm",
                "FishHarvestByNumber",
                "StockedWeighed",
                "StockedByNumber",
                "FishPond")) {
            assertTrue(objects.containsKey("/components/schemas/" + name), name + " is in no request");
        }
    }

    @ParameterizedTest
    @MethodSource("records")
    void the_answer_conforms_to_its_schema(ObjectNode records) {
        JsonPointer at = JsonPointer.compile("/components/schemas/FootprintAnswer");

        assertNone(schemas.faults(at, Reply.to(PATH, records).json()));
    }

    @ParameterizedTest
    @MethodSource("records")
    void a_missing_field_is_an_error_exactly_when_it_is_described_as_required(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            if (!place.at().matches() && place.at().last().getMatchingIndex() < 0) {
                ObjectNode without = records.deepCopy();
                ((ObjectNode) without.at(place.parent())).remove(place.name());
                judge("without " + place.at(), without, faults);
            }
        }
        assertNone(faults);
    }

    @ParameterizedTest
    @MethodSource("records")
    void a_misspelt_field_is_reported_at_its_pointer_with_the_right_name(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            if (place.value().isObject() && !place.value().isEmpty()) {
                // A field of four letters or more, so that one extra letter is still similar.
                Optional<String> right = fields(place.value()).stream()
                        .filter(name -> name.length() > 3)
                        .findFirst();
                if (right.isEmpty()) {
                    continue;
                }
                String wrong = right.get() + "x";
                ObjectNode misspelt = records.deepCopy();
                ((ObjectNode) misspelt.at(place.at())).put(wrong, 1);
                judge("with " + wrong + " at " + place.at(), misspelt, faults);
                Optional<JsonNode> error =
                        error(Reply.to(PATH, misspelt), place.at().appendProperty(wrong));
                if (error.stream()
                        .noneMatch(found -> texts(found.path("did_you_mean")).contains(right.get()))) {
                    faults.add(wrong + " at " + place.at() + " is reported as " + error);
                }
            }
        }
        assertNone(faults);
    }

    private static List<String> fields(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @ParameterizedTest
    @MethodSource("records")
    void a_choice_is_one_of_those_that_the_service_offers(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            boolean kind = place.at().toString().endsWith("/kind")
                    && place.schema().node().has("const");
            if (place.value().isTextual() && place.schema().node().has("enum") && !kind) {
                ObjectNode wrong = with(records, place.at(), records.textNode("no-such-thing"));
                judge("no-such-thing at " + place.at(), wrong, faults);
                Set<String> offered = texts(
                        error(Reply.to(PATH, wrong), list(place)).orElseThrow().path("allowed"));
                Set<String> described = texts(place.schema().node().path("enum"));
                if (!offered.equals(described)) {
                    faults.add(place.at() + " is described as one of " + described + ", the service offers " + offered);
                }
            }
        }
        assertNone(faults);
    }

    /** An unknown word in a list is reported at the list. */
    private static JsonPointer list(Place place) {
        return place.at().last().getMatchingIndex() < 0 ? place.at() : place.parent();
    }

    @ParameterizedTest
    @MethodSource("records")
    void the_limits_of_a_number_are_those_that_the_service_keeps(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            JsonNode schema = place.schema().node();
            if (!place.value().isNumber()) {
                continue;
            }
            assertTrue(schema.has("minimum") && schema.has("maximum"), () -> place.at() + " has no limits");
            double least = JsonAt.number(schema, "/minimum");
            double most = JsonAt.number(schema, "/maximum");
            Map<Double, Boolean> within = new TreeMap<>(Map.of(
                    least,
                    true,
                    most,
                    true,
                    least - Math.max(1e-10, Math.abs(least) / 100),
                    false,
                    most + Math.abs(most) / 100,
                    false));
            within.forEach((value, right) -> {
                ObjectNode changed = with(records, place.at(), number(value));
                Reply reply = Reply.to(PATH, changed);
                String said = said(reply, place.at());
                if (reply.status() >= 500 || said.contains("number") == right) {
                    faults.add(value + " at " + place.at() + " answers " + reply.status() + ": " + said);
                }
                boolean described = schemas.faults(top.at(), changed).isEmpty();
                if (described && !right) {
                    faults.add(value + " at " + place.at() + " is described as right");
                }
            });
            judge("a text at " + place.at(), with(records, place.at(), records.textNode("much")), faults);
        }
        assertNone(faults);
    }

    /** Every number may be a range, within the same limits; a year and the words of a question may not. */
    @ParameterizedTest
    @MethodSource("records")
    void a_range_is_taken_where_the_description_has_one(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            if (!place.value().isNumber()) {
                continue;
            }
            double least = JsonAt.number(place.schema().node(), "/minimum");
            double most = JsonAt.number(place.schema().node(), "/maximum");
            double value = JsonAt.number(place.value(), "");
            double near = value < most ? Math.min(most, value + 0.01) : Math.max(least, value - 0.01);
            double low = Math.min(value, near);
            double high = Math.max(value, near);
            for (double[] range : new double[][] {
                {low, high},
                {low, low, high},
                {low, (low + high) / 2, high},
                {low},
                {low, low, high, high},
                {least - 1, high},
                {low, most * 1.01 + 1},
                {least - 1, low, high}
            }) {
                ArrayNode list = records.arrayNode();
                for (double end : range) {
                    list.add(number(end));
                }
                judge(list + " at " + place.at(), with(records, place.at(), list), faults);
            }
        }
        assertNone(faults);
    }

    private static JsonNode number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? LongNode.valueOf((long) value)
                : DoubleNode.valueOf(value);
    }

    @ParameterizedTest
    @MethodSource("records")
    void the_described_maximum_length_of_a_list_is_that_of_the_service(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            if (place.value().isArray() && !place.value().isEmpty()) {
                int most = JsonAt.integer(place.schema().node(), "/maxItems");
                for (int count : new int[] {most, most + 1}) {
                    ArrayNode list = records.arrayNode();
                    for (int i = 0; i < count; i++) {
                        list.add(place.value().path(0));
                    }
                    String said = said(Reply.to(PATH, with(records, place.at(), list)), place.at());
                    if (said.contains("at most " + most) != count > most) {
                        faults.add(count + " entries at " + place.at() + ", described are at most " + most
                                + ", are answered: " + said);
                    }
                }
            }
        }
        assertNone(faults);
    }

    @ParameterizedTest
    @MethodSource("records")
    void a_described_default_is_that_of_the_service(ObjectNode records) {
        List<String> faults = new ArrayList<>();
        for (Place place : places(records)) {
            if (!place.value().isObject()) {
                continue;
            }
            place.schema().child("properties").children().forEach((name, field) -> {
                JsonNode byDefault = field.node().path("default");
                JsonNode without = records.deepCopy();
                ((ObjectNode) without.at(place.at())).remove(name);
                if (byDefault.isMissingNode() || Reply.to(PATH, without).status() != 200) {
                    return;
                }
                ObjectNode with = (ObjectNode) without.deepCopy();
                ((ObjectNode) with.at(place.at())).set(name, byDefault);
                JsonNode taken = Reply.to(PATH, without).json();
                JsonNode said = Reply.to(PATH, with).json();
                if (!taken.path("footprints").equals(said.path("footprints"))
                        || !taken.path("question").equals(said.path("question"))) {
                    faults.add(name + " at " + place.at() + " is described with the default " + byDefault
                            + ", the service takes another");
                }
            });
        }
        assertNone(faults);
    }

    /** Vocabulary routes, and the record fields that use them. */
    static List<Arguments> words() {
        return List.of(
                Arguments.of("/v1/ingredients", "feed", "ingredient", "kg"),
                Arguments.of("/v1/energy-carriers", "energy", "carrier", "amount"),
                Arguments.of("/v1/transport-modes", "transport", "mode", "tonne_km"),
                Arguments.of("/v1/materials", "materials", "material", "kg"));
    }

    @ParameterizedTest
    @MethodSource("words")
    void every_listed_word_can_be_used_and_its_rows_can_be_retrieved(
            String address, String list, String field, String amount) {
        ObjectNode records = RecordsSent.read("""
                {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 100}}, "draws": 1000}
                """);
        ArrayNode uses = ((ObjectNode) records.path("system")).putArray(list);
        List<String> faults = new ArrayList<>();
        Set<String> rows = new TreeSet<>();
        Reply.to(address).json().path("items").forEach(item -> {
            ObjectNode use =
                    uses.addObject().put(field, JsonAt.text(item, "/id")).put(amount, 10);
            if (item.path("needs_burden").toString().equals("true")) {
                use.put("burden", "economic");
            }
            item.path("default_rows").forEach(row -> rows.add(JsonAt.text(row, "/id")));
        });

        Reply reply = Reply.to(PATH, records);

        assertEquals(200, reply.status(), reply::body);
        for (String row : rows) {
            int status = Reply.to("/v1/rows/" + row).status();
            if (status != 200) {
                faults.add("/v1/rows/" + row + " answers " + status);
            }
        }
        reply.json()
                .findValues("rows")
                .forEach(named -> named.forEach(row -> {
                    boolean ofList = JsonAt.text(row, "").contains("." + JsonAt.text(uses, "/0/" + field) + ".");
                    if (ofList && !rows.contains(JsonAt.text(row, ""))) {
                        faults.add(JsonAt.text(row, "") + " is used, and " + address + " does not list it");
                    }
                }));
        assertNone(faults);
    }

    @Test
    void every_herd_that_the_words_allow_is_answered() {
        List<String> faults = new ArrayList<>();
        for (String animals : SystemReading.CATEGORIES) {
            for (String yield : List.of("milk_kg", "eggs_kg", "live_kg")) {
                for (String edition : List.of("2019", "2006")) {
                    ObjectNode records = RecordsSent.read("""
                            {"system": {"kind": "herd", "animals": "%s", "heads": 5, "breeding_stock": "included", "yield": {"%s": 50},
                             "ipcc_edition": "%s"}, "draws": 1000}
                            """.formatted(animals, yield, edition));
                    judge(animals + " " + yield + " " + edition, records, faults);
                }
            }
        }
        for (String animals : List.of("dairy-cattle", "other-cattle", "buffalo")) {
            for (double milk : new double[] {0, 5, 20, 30}) {
                for (String edition : List.of("2019", "2006")) {
                    ObjectNode records = RecordsSent.read("""
                            {"system": {"kind": "herd", "animals": "%s", "heads": 5, "breeding_stock": "included", "yield": {"live_kg": 50},
                             "ipcc_edition": "%s",
                             "cattle": {"weight_kg": 500, "digestibility_percent": 60, "milk_kg_per_day": %s}},
                             "draws": 1000}
                            """.formatted(animals, edition, milk));
                    judge(animals + " Tier 2 with milk " + milk + " " + edition, records, faults);
                }
            }
        }
        for (String[] word : new String[][] {
            {"/v1/manure-systems", "manure"}, {"/v1/climates", "climate"}, {"/v1/ipcc-regions", "ipcc_region"}
        }) {
            Reply.to(word[0]).json().path("items").forEach(item -> {
                ObjectNode records = RecordsSent.read("""
                        {"system": {"kind": "herd", "animals": "dairy-cattle", "heads": 5, "breeding_stock": "included", "yield": {"milk_kg": 5000},
                         "cattle": {"weight_kg": 300, "digestibility_percent": 60}}, "draws": 1000}
                        """);
                ObjectNode system = (ObjectNode) records.path("system");
                String id = JsonAt.text(item, "/id");
                if (word[1].equals("manure")) {
                    system.putArray("manure").addObject().put("system", id).put("share", 1);
                } else {
                    system.put(word[1], id);
                }
                judge(word[1] + " " + id, records, faults);
            });
        }
        assertNone(faults);
    }

    /**
     * Which animal gives which product, and which by-product is sold, is in the library and not in a schema, so such a refusal is no
     * disagreement.
     */
    private static boolean asksForWhatTheLibraryKnows(Reply reply) {
        JsonNode errors = reply.json().path("errors");
        for (JsonNode error : errors) {
            boolean given = JsonAt.text(error, "/message").startsWith("no product of this library is the ")
                    || JsonAt.text(error, "/message").contains(" is a by-product that is bought and sold")
                    || (JsonAt.text(error, "/pointer").equals("/system/product")
                            && JsonAt.text(error, "/message").startsWith("unknown product \"milk\""));
            if (!given) {
                return false;
            }
        }
        return !errors.isEmpty();
    }

    /** The service accepts changed records exactly when the schema does, and refuses them as described. */
    private static void judge(String change, JsonNode records, List<String> faults) {
        Reply reply = Reply.to(PATH, records);
        List<String> described = schemas.faults(top.at(), records);
        boolean taken = reply.status() == 200 || asksForWhatTheLibraryKnows(reply);
        if (described.isEmpty() != taken) {
            faults.add(change + ": the description says " + described + ", the service " + reply.status() + " "
                    + (reply.status() == 200 ? "" : reply.body()));
        }
        if (reply.status() != 200) {
            schemas.faults(PROBLEM, reply.json()).forEach(fault -> faults.add(change + ": refusal: " + fault));
        }
    }

    private static ObjectNode with(ObjectNode records, JsonPointer at, JsonNode value) {
        ObjectNode changed = records.deepCopy();
        JsonNode parent = changed.at(at.head());
        if (parent instanceof ObjectNode object) {
            object.set(at.last().getMatchingProperty(), value);
        } else {
            ((ArrayNode) parent).set(at.last().getMatchingIndex(), value);
        }
        return changed;
    }

    /** The message of a refusal at a pointer; empty if there is none or the records are accepted. */
    private static String said(Reply reply, JsonPointer at) {
        return error(reply, at).map(error -> JsonAt.text(error, "/message")).orElse("");
    }

    /** The only error of a refusal at a pointer. */
    private static Optional<JsonNode> error(Reply reply, JsonPointer at) {
        List<JsonNode> here = new ArrayList<>();
        reply.json().path("errors").forEach(error -> {
            if (JsonAt.text(error, "/pointer").equals(at.toString())) {
                here.add(error);
            }
        });
        assertTrue(here.size() < 2, () -> at + " is reported twice: " + here);
        return here.stream().findFirst();
    }

    private static Set<String> texts(JsonNode list) {
        Set<String> texts = new TreeSet<>();
        list.forEach(text -> texts.add(JsonAt.text(text, "")));
        return texts;
    }

    private static void assertNone(List<String> faults) {
        if (!faults.isEmpty()) {
            fail(String.join("\n", faults));
        }
    }
}
