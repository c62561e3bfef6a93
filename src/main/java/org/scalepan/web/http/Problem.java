package org.scalepan.web.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.scalepan.input.Excerpt;
import org.scalepan.input.FieldError;
import org.scalepan.input.Suggestion;

/**
 * A problem detail (RFC 9457).
 *
 * @param type relative reference of the problem type
 * @param detail what is wrong with this request, in a sentence
 * @param errors the errors of single fields
 * @param suggestions what to ask instead, the nearest first
 */
public record Problem(
        int status, String type, String title, String detail, List<FieldError> errors, List<Suggestion> suggestions) {
    /** A cell shows a closed list only when it is short. */
    private static final int MOST_IN_A_CELL = 20;
    /** A longer list of errors is no help. */
    private static final int MOST_ERRORS = 20;
    /** What a cell shows of one error, which may repeat the client's own text. */
    private static final int MOST_OF_A_FAULT = 200;
    /** What a cell shows in all: the error with a list of allowed values, or why there is no evidence. */
    private static final int MOST_OF_A_LINE = 600;
    /** Control characters, line and paragraph separators, and the marks that turn the direction of writing. */
    private static final Pattern UNSHOWABLE =
            Pattern.compile("[\\p{Cc}\\u2028\\u2029\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]+");

    public Problem {
        errors = first(errors);
        suggestions = List.copyOf(suggestions);
    }

    public Problem(int status, String type, String title, String detail, List<FieldError> errors) {
        this(status, type, title, detail, errors, List.of());
    }

    /** The same, with what to ask instead. */
    public Problem suggesting(List<Suggestion> instead) {
        return new Problem(status, type, title, detail, errors, instead);
    }

    private static List<FieldError> first(List<FieldError> errors) {
        if (errors.size() <= MOST_ERRORS) {
            return List.copyOf(errors);
        }
        List<FieldError> first = new ArrayList<>(errors.subList(0, MOST_ERRORS - 1));
        String rest = "and " + (errors.size() - first.size()) + " more faults";
        first.add(new FieldError(Optional.empty(), Optional.empty(), rest, List.of(), List.of()));
        return List.copyOf(first);
    }

    public static Problem badBody(List<FieldError> errors) {
        String summary = errors.size() == 1 ? errors.get(0).message() : errors.size() + " fields are wrong";
        if (areBeyond(errors)) {
            return beyond(summary, errors);
        }
        return new Problem(400, "/problems/bad-body", "The records cannot be read", summary, errors);
    }

    /** Whether all errors are exceeded limits, so that the request is valid and only too large (422). */
    private static boolean areBeyond(List<FieldError> errors) {
        return errors.stream().allMatch(FieldError::beyond);
    }

    private static Problem beyond(String summary, List<FieldError> errors) {
        return new Problem(422, "/problems/beyond-limits", "More than the service takes", summary, errors);
    }

    public static Problem badQuery(List<FieldError> errors) {
        if (areBeyond(errors)) {
            return beyond(summary(errors), errors);
        }
        return new Problem(400, "/problems/bad-query", "The question cannot be read", summary(errors), errors);
    }

    public static Problem notFound(String what, List<FieldError> errors) {
        return new Problem(404, "/problems/not-found", "There is no such thing here", what, errors);
    }

    public static Problem noEvidence(String detail) {
        return new Problem(404, "/problems/no-evidence", "No evidence", detail, List.of());
    }

    public static Problem plain(int status, String kind, String title, String detail) {
        return new Problem(status, "/problems/" + kind, title, detail, List.of());
    }

    /** The last part of the type, such as {@code no-evidence}. */
    public String kind() {
        return type.substring(type.lastIndexOf('/') + 1);
    }

    private static String summary(List<FieldError> errors) {
        return errors.size() == 1 ? errors.get(0).message() : errors.size() + " parameters are wrong";
    }

    /** The problem as one short line for a spreadsheet cell. */
    public String line() {
        if (errors.isEmpty()) {
            return "#" + shown(detail, MOST_OF_A_LINE - 1);
        }
        FieldError first = errors.get(0);
        String message = shown(first.message(), MOST_OF_A_FAULT - 1);
        String hint = "";
        if (!first.didYouMean().isEmpty()) {
            hint = ": did you mean " + String.join(" or ", first.didYouMean()) + "?";
        } else if (!first.allowed().isEmpty() && first.allowed().size() <= MOST_IN_A_CELL) {
            hint = ": one of " + String.join(", ", first.allowed());
        }
        return "#" + shown(message + hint, MOST_OF_A_LINE - 1);
    }

    private static String shown(String text, int most) {
        return Excerpt.of(UNSHOWABLE.matcher(text).replaceAll(" "), most);
    }
}
