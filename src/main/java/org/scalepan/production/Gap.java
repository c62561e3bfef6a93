package org.scalepan.production;

import java.util.List;

/**
 * A field that the records leave open, and the named default that filled it, or that it is not counted.
 *
 * @param field the field, as in the request
 * @param filledWith the default in words
 * @param rows the rows of the library behind the default; empty when nothing is counted
 */
public record Gap(String field, String filledWith, List<String> rows) {
    public Gap {
        rows = List.copyOf(rows);
    }

    /** True when nothing stands in the field's place, so that the figure lacks what it would add. */
    public boolean isUncounted() {
        return filledWith.contains("not counted");
    }
}
