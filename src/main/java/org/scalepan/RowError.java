package org.scalepan;

import org.scalepan.input.FieldError;

/**
 * One error of a row.
 *
 * @param field the column, or the JSON Pointer into the records; empty where it is about the whole row
 * @param message a sentence, with what would be right
 */
public record RowError(String field, String message) {
    static RowError of(FieldError error) {
        return new RowError(error.place(), error.sentence());
    }
}
