package org.scalepan.factors;

import java.util.Optional;
import org.scalepan.factors.table.Row;

/** A place in the tree world → region → subregion → country that results are matched by. */
public record Region(String id, String name, String level, Optional<String> iso3, Optional<String> parent) {
    static Region of(Row row) {
        return new Region(
                row.text("id"), row.text("name"), row.text("level"), row.optional("iso3"), row.optional("parent"));
    }
}
