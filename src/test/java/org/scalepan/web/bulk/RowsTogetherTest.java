package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.exchange.rows.BulkCsvRows;
import org.scalepan.exchange.rows.BulkCsvView;
import org.scalepan.exchange.rows.BulkJsonRows;
import org.scalepan.exchange.rows.BulkJsonView;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.rows.BulkRows;
import org.scalepan.exchange.rows.BulkView;
import org.scalepan.exchange.rows.FlatColumns;
import org.scalepan.exchange.text.Csv;
import org.scalepan.input.Input;

/**
 * Rows computed together, on one or many processors, give the same bytes as each alone. The farms are invented; their amounts lie on both
 * sides of every threshold of the computation.
 */
class RowsTogetherTest {
    private static final Csv.CsvStyle STYLE = new Csv.CsvStyle(',', '.', false);
    private static final int ROWS_OF_A_BLOCK = 10;
    private static final List<String> COLUMNS = List.of(
            "kind",
            "name",
            "region",
            "year",
            "product",
            "form",
            "sold_kg",
            "price_per_kg",
            "co_product_allocation",
            "co_products.1.name",
            "co_products.1.kg",
            "co_products.1.price_per_kg",
            "harvest.kg_per_year",
            "harvest.containers",
            "harvest.kg_per_container",
            "harvest.cycles_per_year",
            "cycle_days",
            "pairs_stocked",
            "mortality",
            "kept_for_breeding",
            "feed.1.ingredient",
            "feed.1.kg",
            "feed.1.moisture",
            "feed.1.burden",
            "feed.3.ingredient",
            "feed.3.kg",
            "feed.3.burden",
            "energy.1.carrier",
            "energy.1.amount",
            "grid_ghg_per_kwh",
            "water_m3",
            "transport.1.mode",
            "transport.1.tonne_km",
            "materials.1.material",
            "materials.1.kg",
            "materials.1.years",
            "building_m2",
            "frass.kg",
            "frass.nitrogen",
            "frass.fate",
            "frass.credited",
            "processing.1.step",
            "processing.1.water_kg",
            "processing.1.carrier",
            "animals",
            "ipcc_region",
            "climate",
            "heads",
            "breeding_stock",
            "yield.milk_kg",
            "yield.live_kg",
            "yield.eggs_kg",
            "manure.1.system",
            "manure.1.share",
            "manure.2.system",
            "manure.2.share",
            "cattle.weight_kg",
            "cattle.digestibility_percent",
            "cattle.milk_kg_per_day",
            "cattle.gain_kg_per_day",
            "cattle.crude_protein_percent");

    /** Rows as columns with their cells; the amounts after a tilde are drawn at random. */
    private static final List<String> FARMS = List.of(
            "kind=insects name=a product=mealworm region=portugal year=~2015,2024,2025 harvest.kg_per_year=~180,95.5,1000"
                    + " feed.1.ingredient=wheat-bran feed.1.burden=mass feed.1.kg=~400,3,0 feed.3.ingredient=carrot feed.3.kg=~300,12.25"
                    + " energy.1.carrier=grid-electricity energy.1.amount=~220,0,18.5 materials.1.material=plastic-pp"
                    + " materials.1.kg=~30,1 materials.1.years=~8,2 building_m2=~12,0 frass.fate=spread",
            "kind=insects product=palm-weevil region=peru harvest.containers=~12,3 harvest.kg_per_container=~2,0.1,9"
                    + " harvest.cycles_per_year=~10,26 cycle_days=~28,3,90 pairs_stocked=~5,1,40 mortality=~0,0.2"
                    + " kept_for_breeding=~0.1,0 feed.1.ingredient=wheat-bran feed.1.burden=mass feed.1.kg=~250,1 feed.1.moisture=~0.1,0.5"
                    + " feed.3.ingredient=palm-pith feed.3.kg=~2200,1 feed.3.burden=burden-free frass.kg=~100,0"
                    + " frass.nitrogen=~0.03,0 frass.credited=yes water_m3=~4,0",
            "kind=insects name==1+1 product=mealworm form=dried sold_kg=~60,400 harvest.kg_per_year=~200,70"
                    + " feed.1.ingredient=wheat-bran feed.1.burden=mass feed.1.kg=~900,120 processing.1.step=drying"
                    + " processing.1.water_kg=~130,0 processing.1.carrier=natural-gas co_products.1.name=oil"
                    + " co_products.1.kg=~10,0 co_products.1.price_per_kg=~2,0 price_per_kg=~5,9,0"
                    + " co_product_allocation=economic",
            "kind=insects name=b product=house-cricket harvest.kg_per_year=~50,900 energy.1.carrier=diesel"
                    + " energy.1.amount=~9,0 transport.1.mode=van-diesel transport.1.tonne_km=~60,0",
            "kind=herd animals=layers region=portugal breeding_stock=included heads=~10,0.5 yield.eggs_kg=~140,3 yield.live_kg=~8,800"
                    + " feed.1.ingredient=maize feed.1.kg=~380,0",
            "kind=herd name=c animals=dairy-cattle ipcc_region=western-europe climate=warm-temperate-dry heads=~40,7"
                    + " yield.milk_kg=~260000,900 yield.live_kg=~6500,90000 manure.1.system=pasture"
                    + " manure.1.share=~1,0.6,0.4 manure.2.system=solid-storage manure.2.share=~0,0.4,0.6",
            "kind=herd name=d animals=dairy-cattle region=kenya heads=~5,60 yield.milk_kg=~9000,250000"
                    + " cattle.weight_kg=~400,620.5 cattle.digestibility_percent=~55,62,71 cattle.milk_kg_per_day=~5,14,25"
                    + " cattle.gain_kg_per_day=~0,0.4 cattle.crude_protein_percent=~8,15 grid_ghg_per_kwh=~0.1,0.9"
                    + " energy.1.carrier=grid-electricity energy.1.amount=~500,0",
            "kind=herd animals=other-cattle heads=~9,30 yield.live_kg=~900,2000 cattle.weight_kg=~300,450"
                    + " cattle.digestibility_percent=~50,65 cattle.gain_kg_per_day=~0.2,0.9 climate=tropical-wet");

    private static List<String> drawn(String farm, Random random) {
        Map<String, String> cells = java.util.stream.Stream.of(farm.split(" "))
                .map(cell -> cell.split("=", 2))
                .collect(Collectors.toMap(cell -> cell[0], cell -> cell[1]));
        assertTrue(COLUMNS.containsAll(cells.keySet()), farm);
        return COLUMNS.stream()
                .map(column -> cells.getOrDefault(column, ""))
                .map(cell -> cell.startsWith("~") ? oneOf(cell.substring(1).split(","), random) : cell)
                .toList();
    }

    private static String oneOf(String[] values, Random random) {
        return values[random.nextInt(values.length)];
    }

    private static List<List<String>> rows() {
        Random random = new Random(20261125);
        List<List<String>> rows = new ArrayList<>();
        for (int round = 0; round < 60; round++) {
            for (String farm : FARMS) {
                rows.add(drawn(farm, random));
            }
        }
        return rows;
    }

    private static BulkQuestion question(Map<String, String> parameters) {
        return BulkQuestion.read(Libraries.bundled(), Input.query(parameters)).orElseThrow();
    }

    private static String table(List<List<String>> rows) {
        return String.join(",", COLUMNS) + "\n"
                + rows.stream().map(row -> String.join(",", row) + "\n").collect(Collectors.joining());
    }

    private static String lines(List<List<String>> rows) {
        FlatColumns columns = FlatColumns.read(COLUMNS, '.');
        return rows.stream().map(row -> columns.row(row).records() + "\n").collect(Collectors.joining());
    }

    private static String answered(BulkQuestion question, String sent, boolean table, int processors)
            throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BulkRows rows = table
                ? new BulkCsvRows(question, new StringReader(sent), STYLE)
                : new BulkJsonRows(question, new StringReader(sent))) {
            BulkView view = table ? new BulkCsvView(question, STYLE) : new BulkJsonView(question);
            new BulkRun(rows, view, ROWS_OF_A_BLOCK, processors).writeTo(out);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private static List<String> rows(String answer, boolean table) {
        List<String> lines = answer.lines().toList();
        return table ? lines.subList(1, lines.size()) : lines;
    }

    private static String withoutNumber(String line) {
        return line.replaceFirst("^(\\{\"row\":)?\\d+", "");
    }

    private static void assertTogetherAsAlone(Map<String, String> parameters, boolean table) throws IOException {
        BulkQuestion question = question(parameters);
        List<List<String>> rows = rows();
        String together = answered(question, table ? table(rows) : lines(rows), table, 2);

        List<String> lines = rows(together, table);
        assertEquals(rows.size(), lines.size());
        for (int i = 0; i < rows.size(); i++) {
            List<List<String>> one = List.of(rows.get(i));
            String alone = rows(answered(question, table ? table(one) : lines(one), table, 1), table)
                    .get(0);
            assertEquals(withoutNumber(alone), withoutNumber(lines.get(i)), "row " + (i + 1));
        }
    }

    @Test
    void table_rows_together_are_answered_as_each_alone() throws IOException {
        assertTogetherAsAlone(Map.of("per", "kg-protein"), true);
    }

    @Test
    void table_rows_together_are_answered_as_each_alone_beyond_the_gate_with_credit_and_every_indicator()
            throws IOException {
        assertTogetherAsAlone(
                Map.of("boundary", "processing-gate", "credit", "yes", "indicators", "ghg,land,feed,energy,water"),
                true);
    }

    @Test
    void json_lines_together_are_answered_as_each_alone_including_their_remarks() throws IOException {
        assertTogetherAsAlone(Map.of("per", "kg-edible", "coverage", "0.9"), false);
    }

    @Test
    void each_row_keeps_its_name_and_an_unnamed_farm_is_called_by_its_kind() throws IOException {
        String header = "kind,name,product,harvest.kg_per_year\n";
        String row = "insects,%s,mealworm,180\n";
        String sent = header
                + row.formatted("first")
                + row.formatted("second")
                + row.formatted("\"a, b\"")
                + row.formatted("=1+1")
                + row.formatted("Äcker")
                + row.formatted("");

        List<String> starts = rows(answered(question(Map.of()), sent, true, 2), true).stream()
                .map(line -> line.substring(0, line.indexOf(",mealworm")))
                .toList();
        assertEquals(List.of("1,first", "2,second", "3,\"a, b\"", "4,'=1+1", "5,Äcker", "6,farm"), starts);
    }

    /** Rows of all kinds, some of them invalid, in an order that makes each block different. */
    private static String mixed(boolean table) {
        List<List<String>> rows = rows();
        StringBuilder sent = new StringBuilder(table ? String.join(",", COLUMNS) + "\n" : "");
        for (int i = 0; i < rows.size(); i++) {
            List<List<String>> one = List.of(rows.get(i));
            sent.append(table ? String.join(",", rows.get(i)) + "\n" : lines(one));
            if (i % 7 == 3) {
                sent.append(
                        table
                                ? "insects,too short\n"
                                : "{\"kind\": \"insects\", \"product\": \"mealwurm\"}\n{broken\n");
            }
        }
        return sent.toString();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void a_table_is_answered_with_the_same_bytes_by_any_number_of_processors(int processors) throws IOException {
        BulkQuestion question = question(Map.of("per", "kg-protein"));

        assertEquals(answered(question, mixed(true), true, 1), answered(question, mixed(true), true, processors));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void json_lines_with_draws_are_answered_with_the_same_bytes_by_any_number_of_processors(int processors)
            throws IOException {
        BulkQuestion question = question(Map.of("draws", "1000", "indicators", "ghg,land"));
        String sent = mixed(false).lines().limit(60).collect(Collectors.joining("\n"));

        assertEquals(answered(question, sent, false, 1), answered(question, sent, false, processors));
    }
}
