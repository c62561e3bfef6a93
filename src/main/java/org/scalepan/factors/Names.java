package org.scalepan.factors;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scalepan.factors.table.Row;

/** What things of the vocabularies are called inside a sentence, by the column in which other tables point at them. */
public final class Names {
    private static final Map<String, String> VOCABULARIES = Map.of(
            "product", "products",
            "ingredient", "ingredients",
            "carrier", "energy_carriers",
            "mode", "transport_modes",
            "material", "materials",
            "category", "ipcc_terms",
            "quantity", "ipcc_terms");

    private final Map<String, Map<String, String>> byColumn;

    private Names(Library library) {
        byColumn = VOCABULARIES.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey,
                        entry -> library.table(entry.getValue()).rows().stream()
                                .collect(Collectors.toUnmodifiableMap(
                                        row -> row.text("id"), row -> inSentence(entry.getKey(), row.text("name"))))));
    }

    public static Names of(Library library) {
        return library.view(Names.class, Names::new);
    }

    /** The subject of a row: of the columns given the first that is filled. */
    public Optional<String> subject(Row row, List<String> columns) {
        return columns.stream()
                .flatMap(column -> row.optional(column).map(id -> of(column, id)).stream())
                .findFirst();
    }

    /** A name by the column that holds its id; an id without a name is read as words. */
    public String of(String column, String id) {
        return byColumn.getOrDefault(column, Map.of()).getOrDefault(id, id.replace('-', ' '));
    }

    /** Products are named as they stand inside a sentence; other names begin with a capital letter that is no part of them. */
    private static String inSentence(String column, String name) {
        boolean plain = !column.equals("product") && name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return plain ? Character.toLowerCase(name.charAt(0)) + name.substring(1) : name;
    }
}
