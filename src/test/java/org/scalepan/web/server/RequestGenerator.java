package org.scalepan.web.server;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.scalepan.JsonAt;
import org.scalepan.input.Input;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/**
 * Generates requests from the description: every path with parameters and bodies that its schemas allow, half of them then made invalid
 * in one or two places. The same seed gives the same request.
 */
final class RequestGenerator {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private static final List<String> JUNK = List.of(
            "",
            " ",
            "NaN",
            "Infinity",
            "1e999",
            "-1",
            "0",
            "0x10",
            "null",
            "true",
            ":",
            ",",
            ";",
            "mealworm:",
            ":meal",
            "mealworm:meal:meal",
            "=1+1",
            "../..",
            "<script>alert(7)</script>",
            "\u0000",
            "\n",
            "\u00e9\ud83e\udd97",
            "\u202e",
            "9".repeat(400),
            "x".repeat(250));

    private static final List<String> ACCEPTS = List.of(
            "application/json",
            "text/csv",
            "text/markdown",
            "*/*",
            "text/*;q=0.1",
            "image/png",
            "application/problem+json");

    private static final List<String> CLAIMS = List.of(
            "insects emit a hundred times less than beef",
            "crickets need 2000 times less water than cattle",
            "mealworms cause 80 % less greenhouse gas than pork",
            "silkworm pupae need no land at all",
            "beef");

    private static final List<String> INPUTS = List.of(
            "feed",
            "feed:wheat-bran",
            "energy:diesel",
            "grid_intensity",
            "drying_energy",
            "yield",
            "mortality",
            "water",
            "transport",
            "land",
            "price",
            "heads");

    private final Description description;
    private final List<Description.Operation> operations;

    /** A request. */
    record GeneratedRequest(
            Description.Operation operation, String question, Map<String, String> headers, Optional<String> body) {
        Reply reply() {
            return Reply.to(question, headers, body);
        }

        @Override
        public String toString() {
            return operation.method() + " " + question + " " + headers + " " + body.orElse("");
        }
    }

    RequestGenerator(Description description) {
        this.description = description;
        this.operations = description.operations();
    }

    /** The request of a seed. */
    GeneratedRequest generate(long seed) {
        return new Generation(new SplittableRandom(seed)).request();
    }

    /** The generation of one request. */
    private final class Generation {
        private final SplittableRandom random;

        Generation(SplittableRandom random) {
            this.random = random;
        }

        private boolean chance(double share) {
            return random.nextDouble() < share;
        }

        private <T> T pick(List<T> from) {
            return from.get(random.nextInt(from.size()));
        }

        GeneratedRequest request() {
            // Weighted: routes with many parameters matter more than the vocabularies, which are more numerous.
            List<Description.Operation> rich = operations.stream()
                    .filter(one -> one.method().equals("post")
                            || description.parameters(one).size() > 5)
                    .toList();
            Description.Operation operation = chance(0.7) ? pick(rich) : pick(operations);
            boolean malformed = chance(0.5);
            String path = operation.path();
            Map<String, String> query = new LinkedHashMap<>();
            for (Description.Parameter parameter : description.parameters(operation)) {
                if (parameter.inPath()) {
                    String value = malformed && chance(0.2) ? "no-such" : inPath(operation, parameter);
                    path = path.replace("{" + parameter.name() + "}", encoded(value));
                } else if (isNeeded(operation, parameter) || chance(0.2)) {
                    query.put(parameter.name(), written(value(parameter.schema(), parameter.name(), 0)));
                }
            }
            if (query.containsKey("draws") || knows(operation, "draws")) {
                query.put("draws", "1000");
            }
            query.remove("library");
            Map<String, String> headers = new LinkedHashMap<>();
            Optional<String> body = Optional.empty();
            if (operation.method().equals("post")) {
                body = Optional.of(body(operation, headers, malformed));
            }
            if (malformed && chance(0.6)) {
                malform(query);
            }
            if (chance(0.2)) {
                headers.put("Accept", pick(ACCEPTS));
            }
            String question = query.entrySet().stream()
                    .map(pair -> encoded(pair.getKey()) + "=" + encoded(pair.getValue()))
                    .collect(Collectors.joining("&"));
            return new GeneratedRequest(operation, path + (question.isEmpty() ? "" : "?" + question), headers, body);
        }

        private boolean knows(Description.Operation operation, String name) {
            return description.parameters(operation).stream()
                    .anyMatch(parameter -> parameter.name().equals(name));
        }

        /** Without these most requests would be refused at once. */
        private boolean isNeeded(Description.Operation operation, Description.Parameter parameter) {
            String question = description.question(operation);
            return question.contains("?" + parameter.name() + "=") || question.contains("&" + parameter.name() + "=")
                    ? chance(0.9)
                    : false;
        }

        /** The value of the example, or for products and indicators another one. */
        private String inPath(Description.Operation operation, Description.Parameter parameter) {
            if (parameter.schema().has("enum")
                    || List.of("product", "reference").contains(parameter.name())) {
                return written(value(parameter.schema(), parameter.name(), 0));
            }
            String[] template = operation.path().split("/", -1);
            String[] good =
                    description.question(operation).replaceAll("\\?.*", "").split("/", -1);
            for (int i = 0; i < template.length; i++) {
                if (template[i].equals("{" + parameter.name() + "}")) {
                    return good[i];
                }
            }
            return "none";
        }

        private void malform(Map<String, String> query) {
            List<String> names = new ArrayList<>(query.keySet());
            switch (random.nextInt(3)) {
                case 0 -> query.put(pick(JUNK).strip() + "x", pick(JUNK));
                case 1 -> names.stream().findAny().ifPresent(query::remove);
                default -> {
                    if (!names.isEmpty()) {
                        query.put(pick(names), pick(JUNK));
                    }
                }
            }
        }

        private String body(Description.Operation operation, Map<String, String> headers, boolean malformed) {
            Description.Example example = pick(description.sent(operation));
            headers.putAll(example.headers());
            JsonNode records = example.body().orElseThrow();
            if (!records.isObject()) {
                String rows = JsonAt.text(records, "");
                return malformed ? cut(rows) : rows;
            }
            Description.Part schema = description.bodySchema(operation);
            ObjectNode body = chance(0.5) ? records.deepCopy() : (ObjectNode) value(schema.node(), "", 0);
            if (description.resolve(schema.node()).path("properties").has("draws")) {
                body.put("draws", 1000);
            }
            for (int times = malformed ? 1 + random.nextInt(2) : 0; times > 0; times--) {
                change(body);
            }
            String written = body.toString();
            return malformed && chance(0.1) ? cut(written) : written;
        }

        /** Adds or removes one character. */
        private String cut(String text) {
            int at = random.nextInt(text.length());
            return chance(0.5)
                    ? text.substring(0, at) + text.substring(at + 1)
                    : text.substring(0, at)
                            + pick(List.of("\"", ",", "{", "]", "e", "0", "\u0000", "\n", "-"))
                            + text.substring(at);
        }

        /** Changes one value of a body at any depth. */
        private void change(JsonNode body) {
            List<JsonNode> inner = new ArrayList<>();
            collect(body, inner);
            JsonNode place = pick(inner);
            if (place instanceof ObjectNode object) {
                List<String> names = new ArrayList<>();
                object.fieldNames().forEachRemaining(names::add);
                if (names.isEmpty() || chance(0.15)) {
                    object.set(pick(List.of("extra", "Kg", "", "product ", "__proto__")), junk());
                } else if (chance(0.2)) {
                    object.remove(pick(names));
                } else {
                    String name = pick(names);
                    object.set(name, changed(object.path(name)));
                }
            } else if (place instanceof ArrayNode list) {
                if (list.isEmpty() || chance(0.3)) {
                    list.add(list.isEmpty() ? junk() : list.get(0).deepCopy());
                } else {
                    list.set(random.nextInt(list.size()), junk());
                }
            }
        }

        private void collect(JsonNode node, List<JsonNode> inner) {
            if (node.isContainerNode()) {
                inner.add(node);
                node.forEach(child -> collect(child, inner));
            }
        }

        private JsonNode changed(JsonNode value) {
            return value.isNumber() && chance(0.7)
                    ? JSON.numberNode(
                            JsonAt.number(value, "") * Math.pow(10, random.nextInt(-12, 13)) * (chance(0.1) ? -1 : 1))
                    : junk();
        }

        private JsonNode junk() {
            return switch (random.nextInt(8)) {
                case 0 -> JSON.nullNode();
                case 1 -> JSON.booleanNode(chance(0.5));
                case 2 -> JSON.numberNode(random.nextLong());
                case 3 -> JSON.numberNode(Double.MIN_VALUE);
                case 4 -> JSON.arrayNode().add(1);
                case 5 -> JSON.objectNode();
                default -> TextNode.valueOf(pick(JUNK));
            };
        }

        private JsonNode value(JsonNode written, String name, int depth) {
            if (Description.isRecordedNumber(written)) {
                return recorded(written);
            }
            JsonNode schema = description.resolve(written);
            if (schema.has("const")) {
                return schema.path("const");
            }
            if (schema.has("enum")) {
                return schema.path("enum")
                        .get(random.nextInt(schema.path("enum").size()));
            }
            if (schema.has("oneOf") && !schema.has("properties")) {
                return value(
                        schema.path("oneOf")
                                .get(random.nextInt(schema.path("oneOf").size())),
                        name,
                        depth);
            }
            return switch (schema.path("type").asText("")) {
                case "object" -> object(schema, depth);
                case "array" -> list(schema, name, depth);
                case "integer" -> JSON.numberNode((long) number(schema));
                case "number" -> JSON.numberNode(number(schema));
                default -> TextNode.valueOf(word(name));
            };
        }

        /** A number of records, now and then a range. */
        private JsonNode recorded(JsonNode schema) {
            if (chance(0.85)) {
                return JSON.numberNode(number(schema));
            }
            ArrayNode range = JSON.arrayNode();
            DoubleStream.generate(() -> number(schema))
                    .limit(chance(0.5) ? 2 : 3)
                    .sorted()
                    .forEach(range::add);
            return range;
        }

        private ObjectNode object(JsonNode schema, int depth) {
            ObjectNode object = JSON.objectNode();
            List<String> needed = new ArrayList<>();
            schema.path("required").forEach(name -> needed.add(JsonAt.text(name, "")));
            List<String> forbidden = new ArrayList<>();
            if (!schema.path("oneOf").isEmpty()) {
                int chosen = random.nextInt(schema.path("oneOf").size());
                for (int i = 0; i < schema.path("oneOf").size(); i++) {
                    List<String> names = i == chosen ? needed : forbidden;
                    schema.path("oneOf").get(i).path("required").forEach(name -> names.add(JsonAt.text(name, "")));
                }
            }
            schema.path("properties").properties().forEach(field -> {
                boolean wanted = needed.contains(field.getKey())
                        || (!forbidden.contains(field.getKey()) && chance(depth < 3 ? 0.3 : 0.15));
                if (wanted) {
                    object.set(field.getKey(), value(field.getValue(), field.getKey(), depth + 1));
                }
            });
            return object;
        }

        private ArrayNode list(JsonNode schema, String name, int depth) {
            int most = schema.path("maxItems").asInt(3);
            int count = Math.min(most, Math.max(schema.path("minItems").asInt(0), 1 + random.nextInt(3)));
            ArrayNode list = JSON.arrayNode();
            for (int i = 0; i < count; i++) {
                list.add(value(schema.path("items"), name, depth + 1));
            }
            return list;
        }

        /** Within the limits, sometimes exactly on them, of any order of magnitude. */
        private double number(JsonNode schema) {
            double least = schema.path("minimum")
                    .asDouble(schema.path("exclusiveMinimum").asDouble(0) + 1e-9);
            double most = schema.path("maximum")
                    .asDouble(schema.path("exclusiveMaximum").asDouble(1e6) - 1e-9);
            if (chance(0.1)) {
                return chance(0.5) ? least : most;
            }
            double usual = Math.pow(10, random.nextDouble(-2, 4));
            return usual >= least && usual <= most ? usual : least + (most - least) * random.nextDouble();
        }

        private String word(String name) {
            String table = switch (name) {
                case "product", "products", "against", "reference", "alternatives" -> "products";
                case "ingredient", "displaces" -> "ingredients";
                case "carrier" -> "energy_carriers";
                case "mode" -> "transport_modes";
                case "material" -> "materials";
                case "region" -> "regions";
                case "market" -> "markets";
                default -> "";
            };
            List<String> ids = RunningScalepan.library().ids(table);
            if (!ids.isEmpty()) {
                boolean ofForm = table.equals("products") && chance(0.15);
                return pick(ids)
                        + (ofForm ? ":" + pick(RunningScalepan.library().ids("forms")) : "");
            }
            return switch (name) {
                case "text" -> pick(CLAIMS);
                case "input" -> pick(INPUTS);
                case "currency" -> "EUR";
                case "prices" -> chance(0.3) ? "-" : "7.5";
                default -> "invented";
            };
        }

        private String written(JsonNode value) {
            if (value.isArray()) {
                List<String> parts = new ArrayList<>();
                value.forEach(part -> parts.add(JsonAt.text(part, "")));
                return String.join(",", parts);
            }
            return value.isDouble() ? Input.plain(JsonAt.number(value, "")) : JsonAt.scalar(value, "");
        }

        private String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
        }
    }
}
