package org.scalepan.spark;

import java.util.List;
import java.util.stream.Stream;

/** The file formats of rows and answers. */
enum RowFormat {
    /** Lines of CSV, each file with the same header; cells hold no line ends. */
    CSV,
    /** One JSON object a line. */
    JSONL,
    /** Columns as in CSV, or nested as in JSON. */
    PARQUET;

    String id() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    static RowFormat of(String id) {
        return Stream.of(values())
                .filter(format -> format.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown format \"" + id + "\": one of " + ids()));
    }

    private static List<String> ids() {
        return Stream.of(values()).map(RowFormat::id).toList();
    }
}
