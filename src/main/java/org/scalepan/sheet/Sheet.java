package org.scalepan.sheet;

import java.util.List;

/**
 * One sheet.
 *
 * @param name shown on its tab
 * @param widths of the columns from the left, in characters
 * @param headRows how many rows stay in view while the rest scrolls
 * @param rows cells from the left; rows may differ in length
 */
public record Sheet(String name, List<Integer> widths, int headRows, List<List<Cell>> rows) {
    public Sheet {
        widths = List.copyOf(widths);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
