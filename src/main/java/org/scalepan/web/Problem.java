package org.scalepan.web;

import java.util.List;
import java.util.Optional;

/**
 * A refusal as RFC 9457 has it.
 *
 * @param type a relative reference that names the kind of problem
 * @param detail what is wrong with this request, in a sentence
 * @param errors the single faults
 */
public record Problem(int status, String type, String title, String detail, List<Flaw> errors) {
    /** A cell shows a closed list only when it is short. */
    private static final int MOST_IN_A_CELL = 20;

    public Problem {
        errors = List.copyOf(errors);
    }

    /**
     * One fault.
     *
     * @param parameter the query or path parameter it is about
     * @param pointer the place in the body it is about, as a JSON Pointer (RFC 6901)
     * @param allowed what would be right, when that is a list
     * @param didYouMean the nearest right values, best first
     */
    public record Flaw(
            Optional<String> parameter,
            Optional<String> pointer,
            String message,
            List<String> allowed,
            List<String> didYouMean) {
        public Flaw {
            allowed = List.copyOf(allowed);
            didYouMean = List.copyOf(didYouMean);
        }

        static Flaw of(String parameter, String message) {
            return new Flaw(Optional.of(parameter), Optional.empty(), message, List.of(), List.of());
        }

        static Flaw at(String pointer, String message, List<String> allowed, List<String> didYouMean) {
            return new Flaw(Optional.empty(), Optional.of(pointer), message, allowed, didYouMean);
        }

        static Flaw of(String parameter, String message, List<String> allowed, List<String> didYouMean) {
            return new Flaw(Optional.of(parameter), Optional.empty(), message, allowed, didYouMean);
        }
    }

    static Problem badBody(List<Flaw> errors) {
        String summary = errors.size() == 1 ? errors.get(0).message() : errors.size() + " fields are wrong";
        return new Problem(400, "/problems/bad-body", "The records cannot be read", summary, errors);
    }

    static Problem badQuery(List<Flaw> errors) {
        return new Problem(400, "/problems/bad-query", "The question cannot be read", summary(errors), errors);
    }

    static Problem notFound(String what, List<Flaw> errors) {
        return new Problem(404, "/problems/not-found", "There is no such thing here", what, errors);
    }

    static Problem noEvidence(String detail) {
        return new Problem(404, "/problems/no-evidence", "No evidence", detail, List.of());
    }

    static Problem plain(int status, String kind, String title, String detail) {
        return new Problem(status, "/problems/" + kind, title, detail, List.of());
    }

    private static String summary(List<Flaw> errors) {
        return errors.size() == 1 ? errors.get(0).message() : errors.size() + " parameters are wrong";
    }

    /** The whole refusal in one short line that a spreadsheet cell can show. */
    String line() {
        if (errors.isEmpty()) {
            return "#" + detail;
        }
        Flaw first = errors.get(0);
        String hint = "";
        if (!first.didYouMean().isEmpty()) {
            hint = ": did you mean " + String.join(" or ", first.didYouMean()) + "?";
        } else if (!first.allowed().isEmpty() && first.allowed().size() <= MOST_IN_A_CELL) {
            hint = ": one of " + String.join(", ", first.allowed());
        }
        return "#" + first.message() + hint;
    }
}
