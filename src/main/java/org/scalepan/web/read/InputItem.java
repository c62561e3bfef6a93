package org.scalepan.web.read;

import java.util.Collection;
import java.util.List;
import org.scalepan.factors.Nearest;

/**
 * One text of a question, which knows its place.
 *
 * @param name the parameter or field that has it
 * @param entry the rest of the pointer where it stands in a list of a body, such as {@code /2}; otherwise empty
 */
record InputItem(String name, String entry, String text, InputFaults faults) {
    void fault(String message) {
        faults.add(name, entry, message, List.of(), List.of());
    }

    /** The text, or the part of it that says what it is, names nothing that is known. */
    void unknown(String value, Collection<String> allowed, List<String> near) {
        faults.add(name, entry, Input.unknownWords(Input.singular(name), value), allowed, near);
    }

    /** A fault of another part of the text, which a query string calls by the part's name. */
    void unknownPart(String part, String value, Collection<String> allowed) {
        faults.add(
                faults.isQuery() ? part : name,
                entry,
                Input.unknownWords(part, value),
                allowed,
                Nearest.to(value, allowed, 3));
    }
}
