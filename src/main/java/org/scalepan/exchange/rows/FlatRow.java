package org.scalepan.exchange.rows;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.scalepan.input.FieldError;

/**
 * One row of a table as records.
 *
 * @param records the same object that one system is as JSON
 * @param errors cells that could not be read
 * @param places the columns that entries of lists came from, by JSON Pointer
 */
public record FlatRow(ObjectNode records, List<FieldError> errors, Map<String, String> places) {
    public FlatRow {
        errors = List.copyOf(errors);
        places = Collections.unmodifiableMap(places);
    }

    /** The column of a JSON Pointer into the records. */
    String column(String pointer) {
        String owner = pointer;
        while (!owner.isEmpty()) {
            String place = places.get(owner);
            if (place != null) {
                return (place + pointer.substring(owner.length())).replace('/', '.');
            }
            owner = owner.substring(0, owner.lastIndexOf('/'));
        }
        return pointer.isEmpty() ? "" : pointer.substring(1).replace('/', '.');
    }
}
