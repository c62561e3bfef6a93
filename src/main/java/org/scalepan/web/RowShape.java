package org.scalepan.web;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What two rows have in common that differ in their amounts and their names alone: which cells are filled, and the words in them. */
final class RowShape {
    private int[] parts;
    private int count;
    private int hash;

    /** An empty shape to be filled. */
    RowShape() {
        this.parts = new int[64];
    }

    private RowShape(RowShape other) {
        this.parts = Arrays.copyOf(other.parts, other.count);
        this.count = other.count;
        this.hash = other.hash;
    }

    void clear() {
        count = 0;
        hash = 1;
    }

    /**
     * Adds a filled cell.
     *
     * @param column where it stands
     * @param word the number of the word in it; 0 for an amount or a name
     */
    void add(int column, int word) {
        if (count + 2 > parts.length) {
            parts = Arrays.copyOf(parts, 2 * parts.length);
        }
        parts[count++] = column;
        parts[count++] = word;
        hash = 31 * (31 * hash + column) + word;
    }

    /** This shape, to be kept while the next is filled in here. */
    RowShape kept() {
        return new RowShape(this);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RowShape shape
                && hash == shape.hash
                && Arrays.equals(parts, 0, count, shape.parts, 0, shape.count);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
