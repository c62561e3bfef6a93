package org.scalepan.web.server;

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
import org.scalepan.web.Reply;
import org.scalepan.web.site.DescriptionParts;

/** The OpenAPI description, joined from the files of {@code openapi} as the service joins them. */
public final class Description {
    public static final Path FOLDER = Path.of("openapi");
    public static final String HEAD = "openapi.yaml";

    private final JsonNode root;

    private Description(JsonNode root) {
        this.root = root;
    }

    public static Description read() {
        try {
            return new Description(new YAMLMapper().readTree(joined()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The joined file. */
    public static String joined() {
        return DescriptionParts.joined(file(HEAD), Description::file);
    }

    /** One of its source files. */
    public static String file(String name) {
        try {
            return Files.readString(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public JsonNode root() {
        return root;
    }

    /** True for a number of records: the shared schema of number or range, with the limits of the field beside it. */
    public static boolean isRecordedNumber(JsonNode schema) {
        return schema.has("$ref") && JsonAt.text(schema, "/$ref").endsWith("/RecordedNumber");
    }

    /** A part of the description with its pointer, for failure messages. */
    public record Part(JsonPointer at, JsonNode node) {
        public Part child(String name) {
            JsonPointer pointer =
                    at.append(JsonPointer.compile("/" + name.replace("~", "~0").replace("/", "~1")));
            return new Part(pointer, node.path(name));
        }

        public Map<String, Part> children() {
            Map<String, Part> children = new LinkedHashMap<>();
            node.fieldNames().forEachRemaining(name -> children.put(name, child(name)));
            return children;
        }

        String text(String name) {
            return JsonAt.text(child(name).node(), "");
        }
    }

    /** One method of one path. */
    public record Operation(String path, String method, Part part) {
        String id() {
            return part.text("operationId");
        }

        @Override
        public String toString() {
            return method.toUpperCase(Locale.ROOT) + " " + path;
        }
    }

    /** A parameter of a path, references resolved. */
    record Parameter(String name, boolean inPath, JsonNode schema, Optional<JsonNode> byDefault) {
        boolean isList() {
            return schema.path("type").equals(TextNode.valueOf("array"));
        }
    }

    /**
     * A request of the description: one that an example answers, or one with an example body.
     *
     * @param at its pointer
     * @param headers request headers
     * @param body request body, if any
     */
    record Example(JsonPointer at, String question, Map<String, String> headers, Optional<JsonNode> body) {
        String name() {
            return at.last().getMatchingProperty();
        }

        Reply reply() {
            return Reply.to(question, headers, sent());
        }

        /** Records as JSON, rows as text. */
        Optional<String> sent() {
            return body.map(node -> node.isTextual() ? JsonAt.text(node, "") : node.toString());
        }
    }

    /** One documented response of a path and status, references resolved. */
    record Answer(Operation operation, int status, Part part) {
        Map<String, Part> content() {
            return part.child("content").children();
        }

        @Override
        public String toString() {
            return operation + " " + status;
        }
    }

    public List<Operation> operations() {
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

    /** The requests whose responses are the examples of one documented response, each with its media type. */
    Map<Example, String> examples(Answer answer) {
        Map<Example, String> examples = new LinkedHashMap<>();
        answer.content()
                .forEach((mediaType, content) -> content.child("examples")
                        .children()
                        .values()
                        .forEach(written -> examples.put(
                                new Example(written.at(), written.text("externalValue"), Map.of(), Optional.empty()),
                                mediaType)));
        return examples;
    }

    /** The example bodies of a path that takes records, each as a request. */
    List<Example> sent(Operation operation) {
        List<Example> examples = new ArrayList<>();
        operation
                .part()
                .child("requestBody")
                .child("content")
                .children()
                .forEach((mediaType, content) -> content.child("examples")
                        .children()
                        .values()
                        .forEach(written -> examples.add(new Example(
                                written.at(),
                                written.node().path("x-question").asText(operation.path()),
                                Map.of("Content-Type", mediaType),
                                Optional.of(written.node().path("value"))))));
        return examples;
    }

    /** The requests of the description that a path answers with 200. */
    List<Example> good(Operation operation) {
        List<Example> good = new ArrayList<>(sent(operation));
        answers(operation).stream()
                .filter(answer -> answer.status() == 200)
                .forEach(answer -> good.addAll(examples(answer).keySet()));
        return good;
    }

    /** A request that the path answers with 200: that of its first example, or its own. */
    String question(Operation operation) {
        return good(operation).stream()
                .map(Example::question)
                .findFirst()
                .orElseGet(() -> operation.part().text("x-question"));
    }

    /** The body of that request, where the path takes records. */
    Optional<String> body(Operation operation) {
        return good(operation).stream().findFirst().flatMap(Example::sent);
    }

    /** The headers of that request. */
    Map<String, String> headers(Operation operation) {
        return good(operation).stream().map(Example::headers).findFirst().orElse(Map.of());
    }

    /** The pointer of the schema of a path's request body. */
    public Part bodySchema(Operation operation) {
        return operation
                .part()
                .child("requestBody")
                .child("content")
                .child("application/json")
                .child("schema");
    }

    public Map<String, Part> schemas() {
        return new Part(JsonPointer.empty(), root)
                .child("components")
                .child("schemas")
                .children();
    }

    /** Resolves a reference within the description. */
    JsonNode resolve(JsonNode node) {
        return resolve(new Part(JsonPointer.empty(), node)).node();
    }

    public Part resolve(Part part) {
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
