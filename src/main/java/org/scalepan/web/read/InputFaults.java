package org.scalepan.web.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;

/** The errors of a question, each with its location: a parameter of a query string, or a JSON Pointer into a body (RFC 6901). */
final class InputFaults {
    private static final int MOST_SHOWN = 60;

    private final boolean query;
    private final String pointer;
    private final List<Problem.FieldError> faults;

    private InputFaults(boolean query, String pointer, List<Problem.FieldError> faults) {
        this.query = query;
        this.pointer = pointer;
        this.faults = faults;
    }

    static InputFaults ofQuery() {
        return new InputFaults(true, "", new ArrayList<>());
    }

    static InputFaults ofBody() {
        return new InputFaults(false, "", new ArrayList<>());
    }

    /** The same errors, located below the pointer of a nested object. */
    InputFaults inside(String name, String entry) {
        return new InputFaults(false, place(name) + entry, faults);
    }

    boolean isQuery() {
        return query;
    }

    /** The parameter, or the pointer to the field. */
    String place(String name) {
        return query ? name : within(pointer, name);
    }

    /** The pointer to a field of an object at a pointer. */
    static String within(String pointer, String field) {
        return pointer + "/" + field.replace("~", "~0").replace("/", "~1");
    }

    /** An error of the body as a whole. */
    void addWhole(String message) {
        faults.add(Problem.FieldError.at("", message, List.of(), List.of()));
    }

    /**
     * An error about a value.
     *
     * @param entry the rest of the pointer where the value is a list, such as {@code /2}; otherwise empty
     * @param allowed the allowed values; left out where long, since the vocabulary routes list them
     * @param near the nearest allowed values, best first
     */
    void add(String name, String entry, String message, Collection<String> allowed, List<String> near) {
        faults.add(fault(name, entry, message, allowed.size() <= MOST_SHOWN ? List.copyOf(allowed) : List.of(), near));
    }

    /** An unknown name; all known names are shown. */
    void addUnknownName(String name, String message, List<String> known, List<String> near) {
        faults.add(fault(name, "", message, known, near));
    }

    /** An error about a valid value that exceeds a limit. */
    void addTooMuch(String name, String message) {
        faults.add(fault(name, "", message, List.of(), List.of()).ofTooMuch());
    }

    private Problem.FieldError fault(
            String name, String entry, String message, List<String> allowed, List<String> near) {
        return query
                ? Problem.FieldError.of(name, message, allowed, near)
                : Problem.FieldError.at(place(name) + entry, message, allowed, near);
    }

    List<Problem.FieldError> all() {
        return List.copyOf(faults);
    }

    /** Throws the problem if there are errors. */
    void refuseIfAny() {
        if (!faults.isEmpty()) {
            // A comparison basis read once for each indicator finds the same error each time.
            List<Problem.FieldError> once = faults.stream().distinct().toList();
            throw new ProblemException(query ? Problem.badQuery(once) : Problem.badBody(once));
        }
    }
}
