package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Refusal;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.site.Documents;

/** Each listed limit is exceeded by a real request, and the problem names the limit. */
class LimitsTest {
    private static final String FARM = "\"kind\":\"insects\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":1}";
    private static final String MANY = "/v1/comparison?against=beef&products=";
    /** Those that depend on the machine. */
    private static final Set<String> OF_THE_MACHINE = Set.of(
            "answers-of-client",
            "answers-computed",
            "runs-of-client",
            "runs-computed",
            "bodies-waiting",
            "bodies-waiting-of-client");

    /** Tested elsewhere, because a single request cannot exceed them. */
    private static final Map<String, String> ELSEWHERE = Map.of(
            "rows-waiting-of-client", "SpoolTest",
            "rows-waiting", "SpoolTest",
            "bodies-waiting-of-client", "SpoolTest",
            "bodies-waiting", "SpoolTest",
            "answers-waiting", "TurnstileTest",
            "connections", "ServiceConnectorIT",
            "connections-of-client", "FairnessIT",
            "requests", "ReservedPlacesTest",
            "head", "ServiceConnectorIT",
            "idle", "SlowClientIT");

    private static JsonNode limits() {
        return Reply.to("/limits").json().path("limits");
    }

    private static Map<String, JsonNode> byId() {
        Map<String, JsonNode> limits = new LinkedHashMap<>();
        limits().forEach(limit -> limits.put(JsonAt.text(limit, "/id"), limit));
        return limits;
    }

    private static String products(int count) {
        return String.join(
                ",",
                RunningScalepan.library().products().keySet().stream()
                        .limit(count)
                        .toList());
    }

    private static RawExchange get(String question) {
        return RawExchange.send("GET " + question + " HTTP/1.1", "Host: localhost", "Connection: close");
    }

    private static RawExchange post(String path, String mediaType, String body) {
        return new RecordsEndpoint(path, mediaType, body)
                .post(body.getBytes(StandardCharsets.UTF_8))
                .orElseThrow();
    }

    private static RawExchange records(String more) {
        return post("/v1/footprint", Answer.JSON, "{\"system\":{" + FARM + "}" + more + "}");
    }

    private static RawExchange farm(String more) {
        return post("/v1/footprint", Answer.JSON, "{\"system\":{" + FARM + more + "}}");
    }

    private static RawExchange programme(String more) {
        return post(
                "/v1/substitution",
                Answer.JSON,
                "{\"product\":\"mealworm\",\"kg_per_year\":1000,\"displacement_rate\":1," + more + "}");
    }

    private static String times(int count, String entry) {
        return String.join(",", Collections.nCopies(count, entry));
    }

    /** One name in many mixtures of upper and lower case: entries that differ and are all known. */
    private static String spellings(String name, int count) {
        Set<String> ways = new LinkedHashSet<>(List.of(name));
        for (int at = 0; at < name.length() && ways.size() < count; at++) {
            for (String way : List.copyOf(ways)) {
                ways.add(way.substring(0, at) + Character.toUpperCase(way.charAt(at)) + way.substring(at + 1));
            }
        }
        return ways.stream().limit(count).collect(Collectors.joining(","));
    }

    private static RawExchange rows(String mediaType, String rows) {
        return post("/v1/footprints", mediaType, rows);
    }

    private static RawExchange asked(Supplier<BusyScalepan> busy, String path, Optional<String> body) {
        try (BusyScalepan service = busy.get()) {
            Map<String, String> type = body.isPresent() ? Map.of("Content-Type", Answer.NDJSON) : Map.of();
            Reply reply = Reply.to(service.uri(path), type, body);
            assertEquals("1", reply.header("Retry-After").orElse("none"), path);
            return new RawExchange(reply.status(), "", reply.body());
        }
    }

    /** For each limit a request that just exceeds it. */
    private static Map<String, Supplier<RawExchange>> passing() {
        String row = "{" + FARM + "}";
        Map<String, Supplier<RawExchange>> requests = new TreeMap<>();
        requests.put("address", () -> get("/v1/products?nocache=" + "x".repeat(16_384)));
        requests.put(
                "headers",
                () -> RawExchange.send("GET / HTTP/1.1", "Host: localhost", "X-Long: " + "x".repeat(16_384)));
        requests.put("parameters", () -> get("/v1/products?" + "x=1&".repeat(65)));
        requests.put("parameter", () -> get("/v1/claim?text=" + "x".repeat(2_001)));
        requests.put("products", () -> get(MANY + products(21)));
        requests.put("products-of-brief", () -> get("/v1/brief?against=beef&products=" + products(9)));
        requests.put(
                "rows-of-table", () -> get("/v1/table?indicators=ghg,land,energy,water,feed&products=" + products(41)));
        requests.put("products-of-table", () -> get("/v1/table?products=" + spellings("buffalo-meat", 61)));
        requests.put("indicators-of-table", () -> get("/v1/table?products=beef&indicators=" + spellings("energy", 11)));
        requests.put("units-of-table", () -> get("/v1/table?products=beef&per=" + spellings("kg-protein", 9)));
        requests.put("sources", () -> get(MANY + "mealworm&exclude=" + spellings("physics", 51)));
        requests.put(
                "sources-to-cite",
                () -> get("/v1/sources?ids=" + spellings("physics", 128) + "," + spellings("usda-sr", 64) + ","
                        + spellings("seai", 9)));
        requests.put("baseline", () -> programme("\"baseline\":[" + times(11, "{\"product\":\"beef\"}") + "]"));
        requests.put(
                "alternatives",
                () -> programme(
                        "\"baseline\":[{\"product\":\"beef\"}],\"alternatives\":[" + times(11, "\"tofu\"") + "]"));
        requests.put(
                "spreads",
                () -> post(
                        "/v1/sensitivity",
                        Answer.JSON,
                        "{\"system\":{" + FARM + "},\"spread\":["
                                + times(51, "{\"input\":\"harvest:kg_per_year\",\"percent\":10}") + "]}"));
        requests.put("draws", () -> get(MANY + "mealworm&draws=200001"));
        requests.put("draws-of-answer", () -> get(MANY + products(19) + "&draws=105264"));
        requests.put("draws-of-claim", () -> get("/v1/brief?against=beef&draws=200000&products=" + products(8)));
        requests.put(
                "draws-of-inputs",
                () -> post(
                        "/v1/sensitivity",
                        Answer.JSON,
                        "{\"product\":\"mealworm\",\"against\":\"beef\",\"draws\":200000}"));
        requests.put("draws-of-row", () -> post("/v1/footprints?draws=10001", Answer.NDJSON, row));
        requests.put("body", () -> records(" ".repeat(1_048_576)));
        requests.put("depth", () -> records(",\"x\":" + "[".repeat(16) + "]".repeat(16)));
        requests.put("tokens", () -> records(",\"x\":[" + "1,".repeat(50_000) + "1]"));
        requests.put("number", () -> records(",\"x\":1" + "0".repeat(40)));
        requests.put("text", () -> records(",\"x\":\"" + "x".repeat(10_001) + "\""));
        requests.put("name", () -> records(",\"" + "x".repeat(101) + "\":1"));
        requests.put("field", () -> farm(",\"name\":\"" + "x".repeat(201) + "\""));
        requests.put("systems", () -> records(",\"compare\":{\"systems\":[" + (row + ",").repeat(10) + row + "]}"));
        requests.put("lines", () -> farm(",\"feed\":[" + times(101, "{\"ingredient\":\"maize\",\"kg\":1}") + "]"));
        requests.put("co-products", () -> farm(",\"co_products\":[" + times(21, "{\"kg\":1}") + "]"));
        requests.put(
                "manure-systems",
                () -> post(
                        "/v1/footprint",
                        Answer.JSON,
                        "{\"system\":{\"kind\":\"herd\",\"animals\":\"layers\",\"heads\":10, \"breeding_stock\": \"included\",\"yield\":{\"eggs_kg\":40},"
                                + "\"manure\":[" + times(21, "{\"system\":\"pasture\",\"share\":0.04}") + "]}}"));
        requests.put(
                "processing-steps",
                () -> farm(",\"processing\":["
                        + times(11, "{\"step\":\"drying\",\"water_kg\":1,\"carrier\":\"diesel\"}") + "]"));
        requests.put(
                "bytes-of-rows",
                () -> new RecordsEndpoint("/v1/footprints", "text/csv", "")
                        .postAsFramed("Content-Length: 268435457", new byte[0])
                        .orElseThrow());
        requests.put("rows", () -> rows(Answer.NDJSON, "\n".repeat(2_000_001)));
        requests.put("cells", () -> rows("text/csv", "kind,name\n" + ",".repeat(16_384) + "\n"));
        requests.put("cell", () -> rows("text/csv", "kind,name\ninsects," + "x".repeat(200_000) + "\n"));
        requests.put("line", () -> rows(Answer.NDJSON, "x".repeat(100_001)));
        requests.put(
                "answers-of-client", () -> asked(BusyScalepan::withOneClient, MANY + "mealworm", Optional.empty()));
        requests.put("answers-computed", () -> asked(BusyScalepan::new, MANY + "mealworm", Optional.empty()));
        requests.put("runs-of-client", () -> asked(BusyScalepan::withOneClient, "/v1/footprints", Optional.of(row)));
        requests.put("runs-computed", () -> asked(BusyScalepan::new, "/v1/footprints", Optional.of(row)));
        return requests;
    }

    static Set<String> shownHere() {
        return passing().keySet();
    }

    @Test
    void each_limit_is_exceeded_by_a_request_here_or_in_a_named_test() {
        Set<String> shown = new TreeSet<>(passing().keySet());
        shown.addAll(ELSEWHERE.keySet());

        assertEquals(new TreeSet<>(byId().keySet()), shown);
    }

    @ParameterizedTest
    @MethodSource("shownHere")
    void a_request_beyond_a_limit_is_refused_with_the_status_and_the_limit(String id) {
        JsonNode limit = byId().get(id);
        RawExchange reply = passing().get(id).get();

        // Reported in the row, in a response with status 200.
        assertEquals(limit.path("status").asInt(200), reply.status(), reply::body);
        if (!OF_THE_MACHINE.contains(id)) {
            assertTrue(named(limit).matcher(reply.body()).find(), () -> limit + " is not named in " + reply.body());
        }
        if (reply.status() != 200 && !reply.head().isEmpty()) {
            Refusal.check(id, reply);
        }
    }

    /** The number as printed, or in whole megabytes. */
    private static Pattern named(JsonNode limit) {
        int most = JsonAt.integer(limit, "/most");
        List<String> ways = new ArrayList<>(List.of("\\b" + most + "\\b"));
        if (most % 1_048_576 == 0) {
            ways.add("\\b" + most / 1_048_576 + " MB");
        }
        return Pattern.compile(String.join("|", ways));
    }

    @Test
    void the_table_of_the_operating_guide_has_the_same_limits() {
        Map<String, String> documented = new TreeMap<>();
        Matcher row = Pattern.compile("(?m)^\\| `([a-z-]+)` \\| ([0-9 ]+|[^|]+?) \\| ([a-z]+) \\| ([0-9]{3})? ?\\|")
                .matcher(Documents.read(Documents.guide("operating")));
        while (row.find()) {
            String most =
                    OF_THE_MACHINE.contains(row.group(1)) ? "" : row.group(2).replace(" ", "");
            documented.put(row.group(1), most + " " + row.group(3) + " " + (row.group(4) == null ? "" : row.group(4)));
        }
        Map<String, String> enforced = new TreeMap<>();
        byId().forEach((id, limit) -> enforced.put(
                id,
                (OF_THE_MACHINE.contains(id) ? "" : JsonAt.scalar(limit, "/most")) + " "
                        + JsonAt.text(limit, "/unit") + " "
                        + limit.path("status").asText("")));

        assertEquals(enforced, documented);
    }

    @Test
    void the_minimum_rates_are_those_enforced_on_slow_clients() {
        JsonNode slowest = Reply.to("/limits").json().path("slowest");

        assertEquals(200, JsonAt.integer(slowest, "/sending"), "bytes a second, as SlowClientIT has it");
        assertEquals(1_000, JsonAt.integer(slowest, "/reading"));
    }
}
