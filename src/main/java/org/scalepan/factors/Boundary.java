package org.scalepan.factors;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.table.Row;
import org.scalepan.words.Message;

/**
 * The system boundary of a footprint: the last step of a product's life that is counted, narrowest first. Every boundary includes what
 * the narrower ones include. The table {@code boundaries.csv} describes them; a library whose table names others is refused.
 *
 * <p>Source: ISO 14044:2006, 4.2.3.3 (system boundary), cradle to gate.
 */
public enum Boundary {
    /** The animals and their manure or frass only; of the feed indicators, what the growing animals eat. */
    ANIMAL("animal"),
    /** From cradle to the product leaving the farm. */
    FARM_GATE("farm-gate"),
    /** From cradle to the product leaving slaughter, drying, milling or packing. */
    PROCESSING_GATE("processing-gate"),
    /** From cradle to the shop. */
    RETAIL("retail");

    private final String id;

    Boundary(String id) {
        this.id = id;
    }

    /** The name in tables, questions and answers, such as {@code farm-gate}. */
    public String id() {
        return id;
    }

    /** The upper end of the boundary, within a sentence: {@code up to the farm gate}. */
    public Message message(Indicator indicator) {
        return Message.of("boundary." + id + (this == ANIMAL && indicator.isFeed() ? ".feed" : ""));
    }

    /** The same in an English sentence. */
    public String words(Indicator indicator) {
        return message(indicator).english();
    }

    /** 1 for the narrowest, as in the table. */
    public int rank() {
        return ids().indexOf(id) + 1;
    }

    /** True when everything that {@code other} includes is included here too. */
    public boolean includes(Boundary other) {
        return compareTo(other) >= 0;
    }

    public static Optional<Boundary> of(String id) {
        return Stream.of(values()).filter(boundary -> boundary.id.equals(id)).findFirst();
    }

    /** The boundary named by a cell of a checked table. */
    static Boundary of(Row row, String column) {
        return of(row.text(column)).orElseThrow();
    }

    /** The names of all boundaries, narrowest first. */
    public static List<String> ids() {
        return ids(List.of(values()));
    }

    /** The names of some boundaries, in their order. */
    public static List<String> ids(List<Boundary> boundaries) {
        return boundaries.stream().map(Boundary::id).toList();
    }
}
