package org.scalepan.factors.loading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;

/** Rules between products: a name means one of them, and what includes another is not included in it. */
final class ProductCheck {
    private final ReadableRows tables;
    private final List<Fault> faults;

    ProductCheck(ReadableRows tables, List<Fault> faults) {
        this.tables = tables;
        this.faults = faults;
    }

    void run() {
        if (tables.complete("products", "id", "name", "aliases")) {
            namesAreClear();
        }
        if (tables.complete("products", "id", "broader")) {
            broaderEnds();
        }
    }

    private void namesAreClear() {
        Map<String, String> meant = new HashMap<>();
        List<Row> rows = tables.rows("products");
        // Ids first, and the bundled rows before a user's, so that the fault stands where the name was taken a second
        // time.
        rows.forEach(row -> meant.put(asAsked(row.text("id")), row.text("id")));
        Stream.concat(
                        rows.stream().filter(row -> !row.overlaid()),
                        rows.stream().filter(Row::overlaid))
                .forEach(row -> {
                    clear(row, "name", row.text("name"), meant);
                    row.list("aliases").forEach(alias -> clear(row, "aliases", alias, meant));
                });
    }

    private void clear(Row row, String column, String name, Map<String, String> meant) {
        String other = meant.putIfAbsent(asAsked(name), row.text("id"));
        if (other != null && !other.equals(row.text("id"))) {
            faults.add(row.fault(
                    column,
                    "the name \"" + name + "\" means " + other + " already",
                    "a name must mean one product; use another"));
        }
    }

    /** Questions may write a name in capitals, and with blanks for hyphens. */
    private static String asAsked(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    }

    private void broaderEnds() {
        Map<String, String> broader = new HashMap<>();
        tables.rows("products")
                .forEach(row -> row.optional("broader").ifPresent(up -> broader.put(row.text("id"), up)));
        for (Row row : tables.rows("products")) {
            Set<String> passed = new HashSet<>();
            String at = row.text("id");
            while (at != null && passed.add(at)) {
                at = broader.get(at);
            }
            // Told once for each product that is in the circle, not for those that lead to it.
            if (at != null && at.equals(row.text("id"))) {
                faults.add(row.fault(
                        "broader",
                        "the product " + at + " is included in itself",
                        "broader names a product that includes this one and leads up to one without it"));
            }
        }
    }
}
