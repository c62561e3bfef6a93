package org.scalepan.production;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;

/**
 * The factors from memory that inventories of farms and herds count until somebody has seen them. Leaving them out would flatter the farm
 * whose emissions they are, so that they are used at every grade, marked and listed.
 */
public final class MemoryFactors {
    private static final String FARM = "insect farm";
    private static final String HERD = "herd";
    private static final String FISH = "fish farm";

    private static final List<Inventoried> TABLES = List.of(
            new Inventoried("ingredient_factors", "ingredient", "indicator", List.of(FARM, HERD, FISH)),
            new Inventoried("ingredient_composition", "ingredient", "quantity", List.of(FARM, HERD, FISH)),
            new Inventoried("crop_yields", "crop", "yield", List.of(FARM, HERD, FISH)),
            new Inventoried("energy_factors", "carrier", "quantity", List.of(FARM, HERD, FISH)),
            new Inventoried("transport_factors", "mode", "quantity", List.of(FARM, HERD, FISH)),
            new Inventoried("material_factors", "material", "quantity", List.of(FARM, HERD, FISH)),
            new Inventoried("soil_n2o", "n_input", "quantity", List.of(FARM, HERD)),
            new Inventoried("fertiliser_factors", "fertiliser", "quantity", List.of(FARM, FISH)),
            new Inventoried("processing_factors", "process", "quantity", List.of(FARM)),
            new Inventoried("insect_practice", "product", "quantity", List.of(FARM)),
            new Inventoried("building_heat", "subject", "quantity", List.of(FARM)),
            new Inventoried("frass", "product", "quantity", List.of(FARM)),
            new Inventoried("pond_factors", "subject", "quantity", List.of(FISH)),
            new Inventoried("ipcc_regions", "region", "ipcc_region", List.of(HERD)),
            new Inventoried("ipcc_livestock", "category", "quantity", List.of(HERD)));

    private MemoryFactors() {}

    /** A table that inventories read, the columns of what a row is about and gives, and which inventories read it. */
    private record Inventoried(String table, String subject, String quantity, List<String> usedBy) {}

    /**
     * A factor that nobody has seen for this library and inventories use.
     *
     * @param about what it is about, as its table says
     * @param quantity what it gives
     * @param usedBy the inventories that read its table
     */
    public record MemoryFactor(String id, String table, String about, String quantity, List<String> usedBy) {
        public MemoryFactor {
            usedBy = List.copyOf(usedBy);
        }
    }

    /** The factors, by table in the order that an inventory reads them. */
    public static List<MemoryFactor> of(Library library) {
        return TABLES.stream()
                .flatMap(read -> library.table(read.table()).rows().stream()
                        .filter(MemoryFactors::isUsed)
                        .map(row -> factor(read, row)))
                .toList();
    }

    /** How many factors of each table are from memory; tables without any are left out. */
    public static Map<String, Integer> byTable(List<MemoryFactor> factors) {
        return factors.stream()
                .collect(Collectors.groupingBy(
                        MemoryFactor::table, java.util.LinkedHashMap::new, Collectors.summingInt(factor -> 1)));
    }

    private static boolean isUsed(Row row) {
        return row.text("check").equals(Grade.MEMORY.id())
                && row.optional("use").map("default"::equals).orElse(true);
    }

    private static MemoryFactor factor(Inventoried read, Row row) {
        String about = Stream.of(read.subject(), "region")
                .flatMap(column -> row.optional(column).stream())
                .distinct()
                .collect(Collectors.joining(", "));
        return new MemoryFactor(
                row.text("id"),
                read.table(),
                about,
                row.optional(read.quantity()).orElse(read.quantity()),
                read.usedBy());
    }
}
