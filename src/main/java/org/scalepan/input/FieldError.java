package org.scalepan.input;

import java.util.List;
import java.util.Optional;

/**
 * One error of a question.
 *
 * @param parameter the query or path parameter it is about
 * @param pointer the place in the body it is about, as a JSON Pointer (RFC 6901)
 * @param allowed the allowed values, where they are a closed list
 * @param didYouMean the nearest allowed values, best first
 * @param beyond whether the value is valid and only exceeds a limit
 */
public record FieldError(
        Optional<String> parameter,
        Optional<String> pointer,
        String message,
        List<String> allowed,
        List<String> didYouMean,
        boolean beyond) {
    public FieldError(
            Optional<String> parameter,
            Optional<String> pointer,
            String message,
            List<String> allowed,
            List<String> didYouMean) {
        this(parameter, pointer, message, allowed, didYouMean, false);
    }

    public FieldError {
        parameter = parameter.map(Excerpt::of);
        allowed = List.copyOf(allowed);
        didYouMean = List.copyOf(didYouMean);
    }

    /** The same error, marked as an exceeded limit. */
    public FieldError ofTooMuch() {
        return new FieldError(parameter, pointer, message, allowed, didYouMean, true);
    }

    public static FieldError of(String parameter, String message) {
        return new FieldError(Optional.of(parameter), Optional.empty(), message, List.of(), List.of());
    }

    public static FieldError at(String pointer, String message, List<String> allowed, List<String> didYouMean) {
        return new FieldError(Optional.empty(), Optional.of(pointer), message, allowed, didYouMean);
    }

    public static FieldError of(String parameter, String message, List<String> allowed, List<String> didYouMean) {
        return new FieldError(Optional.of(parameter), Optional.empty(), message, allowed, didYouMean);
    }

    /** The error as one sentence, with what would be right. */
    public String sentence() {
        if (!didYouMean.isEmpty()) {
            return message + ": did you mean " + String.join(", ", didYouMean) + "?";
        }
        return allowed.isEmpty() ? message : message + ": one of " + String.join(", ", allowed);
    }

    /** The column, parameter or JSON Pointer that it is about; empty where it is about the whole. */
    public String place() {
        return parameter.or(() -> pointer).orElse("");
    }
}
