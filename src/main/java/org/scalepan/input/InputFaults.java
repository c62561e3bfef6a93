package org.scalepan.input;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The errors of a question, each with its location: a parameter of a query string, or a JSON Pointer into a body (RFC 6901). */
final class InputFaults {
    private static final int MOST_SHOWN = 60;

    private final boolean query;
    private final String pointer;
    private final List<FieldError> faults;

    private InputFaults(boolean query, String pointer, List<FieldError> faults) {
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
        faults.add(FieldError.at("", message, List.of(), List.of()));
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

    private FieldError fault(String name, String entry, String message, List<String> allowed, List<String> near) {
        return query
                ? FieldError.of(name, message, allowed, near)
                : FieldError.at(place(name) + entry, message, allowed, near);
    }

    List<FieldError> all() {
        return List.copyOf(faults);
    }
}
