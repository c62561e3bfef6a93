package org.scalepan.web;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.scalepan.JsonAt;

/** The description of the interface in {@code openapi/openapi.yaml}, as the tests read it. */
final class Description {
    static final Path FILE = Path.of("openapi", "openapi.yaml");

    private final JsonNode root;

    private Description(JsonNode root) {
        this.root = root;
    }

    static Description read() {
        try {
            return new Description(new YAMLMapper().readTree(Files.readString(FILE)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    JsonNode root() {
        return root;
    }

    /** A part of the description and where it stands, so that a fault can say so. */
    record Part(JsonPointer at, JsonNode node) {
        Part child(String name) {
            JsonPointer pointer =
                    at.append(JsonPointer.compile("/" + name.replace("~", "~0").replace("/", "~1")));
            return new Part(pointer, node.path(name));
        }

        Map<String, Part> children() {
            Map<String, Part> children = new LinkedHashMap<>();
            node.fieldNames().forEachRemaining(name -> children.put(name, child(name)));
            return children;
        }

        String text(String name) {
            return JsonAt.text(child(name).node(), "");
        }
    }

    /** One method of one address. */
    record Operation(String path, String method, Part part) {
        String id() {
            return part.text("operationId");
        }

        @Override
        public String toString() {
            return method.toUpperCase(Locale.ROOT) + " " + path;
        }
    }

    /** A parameter of an address, references followed. */
    record Parameter(String name, boolean inPath, JsonNode schema, Optional<JsonNode> byDefault) {
        boolean isList() {
            return schema.path("type").equals(TextNode.valueOf("array"));
        }
    }

    /**
     * An example.
     *
     * @param question the question whose answer it is
     * @param headers what the question is asked with
     * @param body what is sent along, when records are
     */
    record Example(String name, String question, Map<String, String> headers, Optional<JsonNode> body, JsonNode value) {
        Reply reply() {
            return Reply.to(question, headers, sent());
        }

        /** Records as JSON, rows as they are written. */
        Optional<String> sent() {
            return body.map(node -> node.isTextual() ? JsonAt.text(node, "") : node.toString());
        }
    }

    /** One documented answer of an address: what comes with a status, references followed. */
    record Answer(Operation operation, int status, Part part) {
        Map<String, Part> content() {
            return part.child("content").children();
        }

        @Override
        public String toString() {
            return operation + " " + status;
        }
    }

    List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        new Part(JsonPointer.empty(), root)
                .child("paths")
                .children()
                .forEach((path, item) -> item.children()
                        .forEach((method, operation) -> operations.add(new Operation(path, method, operation))));
        return operations;
    }

    List<Parameter> parameters(Operation operation) {
        List<Parameter> parameters = new ArrayList<>();
        for (JsonNode written : operation.part().node().path("parameters")) {
            JsonNode parameter = resolve(written);
            JsonNode schema = parameter.path("schema");
            parameters.add(new Parameter(
                    JsonAt.text(parameter, "/name"),
                    JsonAt.text(parameter, "/in").equals("path"),
                    resolve(schema),
                    Optional.of(schema.path("default")).filter(value -> !value.isMissingNode())));
        }
        return parameters;
    }

    List<Answer> answers(Operation operation) {
        List<Answer> answers = new ArrayList<>();
        operation
                .part()
                .child("responses")
                .children()
                .forEach((status, answer) ->
                        answers.add(new Answer(operation, Integer.parseInt(status), resolve(answer))));
        return answers;
    }

    /** The examples of one documented answer, each with the media type that it has. */
    Map<Example, String> examples(Answer answer) {
        Map<Example, String> examples = new LinkedHashMap<>();
        answer.content()
                .forEach((mediaType, content) -> content.child("examples")
                        .children()
                        .values()
                        .forEach(written -> examples.put(example(resolve(written)), mediaType)));
        return examples;
    }

    List<Example> examples() {
        return new Part(JsonPointer.empty(), root)
                .child("components").child("examples").children().values().stream()
                        .map(Description::example)
                        .toList();
    }

    private static Example example(Part part) {
        Map<String, String> headers = new LinkedHashMap<>();
        Map.of("Accept", "x-accept", "Content-Type", "x-content-type").forEach((name, key) -> {
            if (part.node().has(key)) {
                headers.put(name, part.text(key));
            }
        });
        String at = part.at().toString();
        return new Example(
                at.substring(at.lastIndexOf('/') + 1),
                part.text("x-question"),
                headers,
                Optional.of(part.node().path("x-body")).filter(node -> !node.isMissingNode()),
                part.node().path("value"));
    }

    /** A question that the address answers with 200: that of its first example, or its own. */
    String question(Operation operation) {
        return answers(operation).stream()
                .filter(answer -> answer.status() == 200)
                .flatMap(answer -> examples(answer).keySet().stream())
                .map(Example::question)
                .findFirst()
                .orElseGet(() -> operation.part().text("x-question"));
    }

    /** The records of that question, where the address takes records. */
    Optional<String> body(Operation operation) {
        return answers(operation).stream()
                .filter(answer -> answer.status() == 200)
                .flatMap(answer -> examples(answer).keySet().stream())
                .findFirst()
                .flatMap(Example::sent);
    }

    /** The headers of that question. */
    Map<String, String> headers(Operation operation) {
        return answers(operation).stream()
                .filter(answer -> answer.status() == 200)
                .flatMap(answer -> examples(answer).keySet().stream())
                .findFirst()
                .map(Example::headers)
                .orElse(Map.of());
    }

    /** Where the schema of what an address takes stands. */
    Part bodySchema(Operation operation) {
        return operation
                .part()
                .child("requestBody")
                .child("content")
                .child("application/json")
                .child("schema");
    }

    Map<String, Part> schemas() {
        return new Part(JsonPointer.empty(), root)
                .child("components")
                .child("schemas")
                .children();
    }

    /** Follows a reference within the description. */
    JsonNode resolve(JsonNode node) {
        return resolve(new Part(JsonPointer.empty(), node)).node();
    }

    Part resolve(Part part) {
        Part found = part;
        while (found.node().has("$ref")) {
            JsonPointer pointer =
                    JsonPointer.compile(JsonAt.text(found.node(), "/$ref").substring(1));
            found = new Part(pointer, root.at(pointer));
            if (found.node().isMissingNode()) {
                throw new AssertionError("nothing stands at " + pointer);
            }
        }
        return found;
    }
}
