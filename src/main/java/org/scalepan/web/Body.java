package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.scalepan.factors.Nearest;

/**
 * Reads one object of a request's body, field by field. Every reading collects its fault with a JSON Pointer instead of stopping, so
 * that one refusal names everything that is wrong; {@link #close} then refuses fields that nobody read.
 */
final class Body {
    static final int MOST_CHARACTERS = 200;

    private final JsonNode node;
    private final String pointer;
    private final List<Problem.Flaw> flaws;
    private final Set<String> read = new LinkedHashSet<>();

    private Body(JsonNode node, String pointer, List<Problem.Flaw> flaws) {
        this.node = node;
        this.pointer = pointer;
        this.flaws = flaws;
    }

    /** The body as a whole, which must be an object. */
    static Body of(JsonNode node) {
        Body body = new Body(node, "", new ArrayList<>());
        if (!node.isObject()) {
            body.flaws.add(Problem.Flaw.at("", "the body must be a JSON object", List.of(), List.of()));
        }
        return body;
    }

    boolean has(String field) {
        read.add(field);
        return !node.path(field).isMissingNode();
    }

    /** An object inside; absent ones read as empty. */
    Optional<Body> object(String field) {
        if (!has(field)) {
            return Optional.empty();
        }
        JsonNode inner = node.path(field);
        if (!inner.isObject()) {
            fault(field, field + " must be an object");
            return Optional.empty();
        }
        return Optional.of(new Body(inner, place(field), flaws));
    }

    /** A list of objects; absent reads as empty. */
    List<Body> objects(String field, int most) {
        List<Body> bodies = new ArrayList<>();
        for (int i = 0; i < elements(field, most); i++) {
            JsonNode inner = node.path(field).path(i);
            if (inner.isObject()) {
                bodies.add(new Body(inner, place(field) + "/" + i, flaws));
            } else {
                flaws.add(Problem.Flaw.at(
                        place(field) + "/" + i, "entries of " + field + " must be objects", List.of(), List.of()));
            }
        }
        return bodies;
    }

    /** A list of texts; absent reads as empty. */
    List<String> texts(String field, int most) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < elements(field, most); i++) {
            JsonNode inner = node.path(field).path(i);
            if (inner.isTextual() && inner.asText().length() <= MOST_CHARACTERS) {
                texts.add(inner.asText());
            } else {
                flaws.add(Problem.Flaw.at(
                        place(field) + "/" + i, "entries of " + field + " must be short texts", List.of(), List.of()));
            }
        }
        return texts;
    }

    private int elements(String field, int most) {
        if (!has(field)) {
            return 0;
        }
        JsonNode list = node.path(field);
        if (!list.isArray()) {
            fault(field, field + " must be a list");
            return 0;
        }
        if (list.size() > most) {
            tooMuch(field, field + " has " + list.size() + " entries; at most " + most + " are allowed");
            return 0;
        }
        return list.size();
    }

    /** A number within limits, if given. */
    OptionalDouble number(String field, double least, double most) {
        if (!has(field)) {
            return OptionalDouble.empty();
        }
        JsonNode value = node.path(field);
        if (!value.isNumber() || !(value.asDouble() >= least && value.asDouble() <= most)) {
            fault(field, field + " must be a number from " + Numbers.plain(least) + " to " + Numbers.plain(most));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value.asDouble());
    }

    /** A number that must be given; 0 stands in after a fault. */
    double needNumber(String field, double least, double most) {
        if (!has(field)) {
            fault(field, field + " is missing");
            return 0;
        }
        return number(field, least, most).orElse(0);
    }

    /** A short text, if given. */
    Optional<String> text(String field) {
        if (!has(field)) {
            return Optional.empty();
        }
        JsonNode value = node.path(field);
        if (value.isTextual() && value.asText().length() > MOST_CHARACTERS) {
            tooMuch(field, field + " is longer than " + MOST_CHARACTERS + " characters");
            return Optional.empty();
        }
        if (!value.isTextual() || value.asText().isBlank()) {
            fault(field, field + " must be a text of 1 to " + MOST_CHARACTERS + " characters");
            return Optional.empty();
        }
        return Optional.of(value.asText().strip());
    }

    /** One of a closed list of names, if given. */
    Optional<String> oneOf(String field, Collection<String> allowed) {
        Optional<String> value = text(field);
        if (value.isPresent() && !allowed.contains(value.get())) {
            unknown(field, value.get(), allowed, Nearest.to(value.get(), allowed, 3));
            return Optional.empty();
        }
        return value;
    }

    /** One of a closed list of names that must be given. */
    Optional<String> needOneOf(String field, Collection<String> allowed) {
        if (!has(field)) {
            flaws.add(Problem.Flaw.at(place(field), field + " is missing", shown(allowed), List.of()));
            return Optional.empty();
        }
        return oneOf(field, allowed);
    }

    void unknown(String field, String value, Collection<String> allowed, List<String> near) {
        flaws.add(Problem.Flaw.at(place(field), "unknown " + field + " \"" + value + "\"", shown(allowed), near));
    }

    void fault(String field, String message) {
        flaws.add(Problem.Flaw.at(place(field), message, List.of(), List.of()));
    }

    private void tooMuch(String field, String message) {
        flaws.add(Problem.Flaw.at(place(field), message, List.of(), List.of()).ofTooMuch());
    }

    /** A fault with what would be right. */
    void fault(String field, String message, Collection<String> allowed) {
        flaws.add(Problem.Flaw.at(place(field), message, shown(allowed), List.of()));
    }

    /** A text or number as text, if given: for fields that are read by the rules of query parameters. */
    Optional<String> scalar(String field) {
        if (!has(field)) {
            return Optional.empty();
        }
        JsonNode value = node.path(field);
        if (!value.isTextual() && !value.isNumber()) {
            fault(field, field + " must be a text or a number");
            return Optional.empty();
        }
        return Optional.of(value.asText());
    }

    /** Takes over a fault that was found by the rules of query parameters. */
    void unknownScalar(Problem.Flaw flaw) {
        Problem.Flaw placed =
                Problem.Flaw.at(place(flaw.parameter().orElse("")), flaw.message(), flaw.allowed(), flaw.didYouMean());
        flaws.add(flaw.beyond() ? placed.ofTooMuch() : placed);
    }

    /** Refuses fields that nobody asked for, which are mostly misspelt. */
    void close() {
        node.fieldNames().forEachRemaining(field -> {
            if (!read.contains(field)) {
                flaws.add(Problem.Flaw.at(
                        place(field),
                        "unknown field \"" + field + "\"",
                        List.copyOf(read),
                        Nearest.to(field, read, 2)));
            }
        });
    }

    List<Problem.Flaw> flaws() {
        return List.copyOf(flaws);
    }

    /** Stops here if anything was wrong anywhere in the body. */
    void refuseIfWrong() {
        if (!flaws.isEmpty()) {
            throw new Refused(Problem.badBody(flaws));
        }
    }

    private static List<String> shown(Collection<String> allowed) {
        return allowed.size() <= 60 ? List.copyOf(allowed) : List.of();
    }

    private String place(String field) {
        return pointer + "/" + field.replace("~", "~0").replace("/", "~1");
    }
}
