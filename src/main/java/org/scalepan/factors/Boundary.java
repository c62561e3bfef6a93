package org.scalepan.factors;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.table.Row;

/**
 * The system boundary of a footprint: the last step of a product's life that is counted, narrowest first. Every boundary includes what
 * the narrower ones include. The table {@code boundaries.csv} describes them; a library whose table names others is refused.
 *
 * <p>Source: ISO 14044:2006, 4.2.3.3 (system boundary), cradle to gate.
 */
public enum Boundary {
    /** The animals and their manure or frass only; of the feed indicators, what the growing animals eat. */
    ANIMAL("animal", "from the animals and their manure or frass only"),
    /** From cradle to the product leaving the farm. */
    FARM_GATE("farm-gate", "up to the farm gate"),
    /** From cradle to the product leaving slaughter, drying, milling or packing. */
    PROCESSING_GATE("processing-gate", "up to the processing gate"),
    /** From cradle to the shop. */
    RETAIL("retail", "up to retail");

    private final String id;
    private final String words;

    Boundary(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** The name in tables, questions and answers, such as {@code farm-gate}. */
    public String id() {
        return id;
    }

    /** The upper end of the boundary, within a sentence: {@code up to the farm gate}. */
    public String words(Indicator indicator) {
        return this == ANIMAL && indicator.isFeed() ? "fed to the growing animals" : words;
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
