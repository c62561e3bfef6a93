package org.scalepan.input;

import java.util.Collection;
import java.util.List;
import org.scalepan.factors.Nearest;

/**
 * One text of a question with its location.
 *
 * @param name the parameter or field that has it
 * @param entry the rest of the pointer in a list of a body, such as {@code /2}; otherwise empty
 */
public record InputItem(String name, String entry, String text, InputFaults faults) {
    /** True in a query string, where a list is one text with commas. */
    public boolean isOfQuery() {
        return faults.isQuery();
    }

    public void fault(String message) {
        faults.add(name, entry, message, List.of(), List.of());
    }

    /** Adds an error that says itself what is wrong, with what may have been meant. */
    public void unclear(String message, List<String> near) {
        faults.add(name, entry, message, List.of(), near);
    }

    /** Adds an error: the text, or the part that identifies it, is unknown. */
    public void unknown(String value, Collection<String> allowed, List<String> near) {
        faults.add(name, entry, Input.unknownWords(Input.singular(name), value), allowed, near);
    }

    /** Adds an error about another part of the text, which a query string reports under the part's name. */
    public void unknownPart(String part, String value, Collection<String> allowed) {
        faults.add(
                faults.isQuery() ? part : name,
                entry,
                Input.unknownWords(part, value),
                allowed,
                Nearest.to(value, allowed, 3));
    }
}
