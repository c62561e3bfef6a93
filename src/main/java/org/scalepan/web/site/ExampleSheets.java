package org.scalepan.web.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.scalepan.sheet.Cell;
import org.scalepan.sheet.Sheet;

/**
 * The example workbook: one number per cell, a whole table by one request, and instructions. Yellow cells are inputs. Numbers are always
 * parsed by NUMBERVALUE with a decimal point, because WEBSERVICE returns text, which a spreadsheet with decimal commas would misread.
 */
final class ExampleSheets {
    /** Known products, one misspelt and one without published results, to show both hints; then empty rows. */
    private static final List<String> PRODUCTS =
            List.of("mealworm", "chicken", "pork", "beef", "mealwurm", "silkworm-pupae", "", "");

    private static final int FIRST_PRODUCT = 11;
    private static final int TABLE_ROWS = 12;
    /** Column M, counted from 0. */
    private static final int HELPER = 12;

    private static final int FIRST_TABLE_ROW = 10;

    private final String address;

    /** Sheets that call the service at an address such as {@code http://127.0.0.1:8080}. */
    ExampleSheets(String address) {
        this.address = address;
    }

    List<Sheet> sheets() {
        return List.of(figures(), table(), notes());
    }

    private Sheet figures() {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(List.of(Cell.title("Scalepan: one number for one cell")));
        rows.add(List.of(
                Cell.text("Change a yellow cell: a product, the indicator, the unit. Every other cell follows.")));
        rows.add(setting("Address of the service", address, "where the service answers"));
        rows.add(setting("Indicator", "ghg", "ghg, land, energy, water, water-footprint, feed, feed-dry-matter"));
        rows.add(setting("Per", "kg-protein", "kg-live, kg-edible, kg-dry-matter, kg-protein, 100g-protein, ..."));
        rows.add(setting("Up to", "", "empty for the usual end; or animal, farm-gate, processing-gate, retail"));
        rows.add(setting("Beside", "beef", "the product that the others are compared with"));
        // How every question ends.
        rows.add(inHelperColumn(Cell.live(ending("$B$5", "$B$6"))));
        rows.add(List.of());
        rows.add(List.of(
                Cell.head("Product"),
                Cell.head("Median"),
                Cell.head("Low (5 %)"),
                Cell.head("High (95 %)"),
                Cell.head("Unit"),
                Cell.head("Studies"),
                Cell.live("\"Times less than \"&$B$7").asHead(),
                Cell.head("Low (5 %)"),
                Cell.head("High (95 %)"),
                Cell.head("In words, or why there is no number"),
                Cell.head("Sources"),
                Cell.head("References")));
        for (int i = 0; i < PRODUCTS.size(); i++) {
            rows.add(product(PRODUCTS.get(i), FIRST_PRODUCT + i));
        }
        return new Sheet("Figures", List.of(24, 12, 12, 13, 26, 10, 14, 12, 13, 60, 36, 110, 10), 0, rows)
                .withHidden(Set.of(HELPER))
                .withLaterLines(10);
    }

    /** A cell that only other cells need: its column is hidden. */
    private static List<Cell> inHelperColumn(Cell helper) {
        List<Cell> cells = new ArrayList<>(Collections.nCopies(HELPER, Cell.empty()));
        cells.add(helper);
        return cells;
    }

    /** The end of a question: unit and boundary out of two cells, of which the second may be empty, which Calc cannot encode. */
    private static String ending(String per, String boundary) {
        return "\"?on_error=200&per=\"&IF(" + per + "=\"\",\"\",ENCODEURL(" + per + "))&\"&boundary=\"&IF(" + boundary
                + "=\"\",\"\",ENCODEURL(" + boundary + "))";
    }

    private static List<Cell> setting(String name, String value, String meaning) {
        // The empty cell leaves space for a long value.
        return List.of(Cell.head(name), Cell.input(value), Cell.empty(), Cell.text(meaning));
    }

    private static List<Cell> product(String name, int row) {
        String value = "$B$3&\"/v1/value/\"&$B$4&\"/\"&ENCODEURL($A" + row + ")&$M$8";
        String ratio = "$B$3&\"/v1/ratio/\"&$B$4&\"/\"&ENCODEURL($A" + row + ")&\"/\"&ENCODEURL($B$7)&$M$8";
        return List.of(
                Cell.input(name),
                number(value, "median", row),
                number(value, "low", row),
                number(value, "high", row),
                ifNumber(value, "unit", row),
                number(value, "studies", row),
                number(ratio, "median", row),
                number(ratio, "low", row),
                number(ratio, "high", row),
                Cell.live("IF($A" + row + "=\"\",\"\",IFERROR(" + fetched(value, "text")
                                + ",\"no answer from \"&$B$3&\": does the service run, and may this file ask it?\"))")
                        .wrapped(),
                ifNumber(value, "sources", row).wrapped(),
                ifNumber(value, "references", row).wrapped());
    }

    private static String fetched(String question, String stat) {
        return "WEBSERVICE(" + question + "&\"&stat=" + stat + "\")";
    }

    /** A number, or empty; the hint has its own column. */
    private static Cell number(String question, String stat, int row) {
        return Cell.live(
                "IF($A" + row + "=\"\",\"\",IFERROR(NUMBERVALUE(" + fetched(question, stat) + ",\".\",\",\"),\"\"))");
    }

    /** Text that is shown only with a number. */
    private static Cell ifNumber(String question, String stat, int row) {
        return Cell.live("IF(ISNUMBER($B" + row + "),IFERROR(" + fetched(question, stat) + ",\"\"),\"\")");
    }

    private static Sheet table() {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(List.of(Cell.title("Scalepan: a whole table by one request")));
        rows.add(List.of(Cell.text(
                "One cell calls the service, the others select from its answer, which saves requests. For more lines copy the last one"
                        + " down.")));
        rows.add(setting("Products", "mealworm,chicken,pork,beef", "names with commas between"));
        rows.add(setting("Indicators", "ghg,land", "names with commas between"));
        rows.add(setting("Per", "kg-protein", "a unit, or several with commas between; empty for the usual ones"));
        rows.add(setting("Up to", "", "empty for the usual end; or animal, farm-gate, processing-gate, retail"));
        rows.add(List.of(
                Cell.head("Hint"), Cell.live("IF(LEFT($M$8,1)=\"#\",$M$8,\"\")").wrapped()));
        // The answer as it came.
        rows.add(
                inHelperColumn(
                        Cell.live(
                                "IFERROR(WEBSERVICE(Figures!$B$3&\"/v1/table\"&" + ending("$B$5", "$B$6")
                                        + "&\"&delim=%7C&products=\"&ENCODEURL($B$3)&\"&indicators=\"&ENCODEURL($B$4)),\"#no answer from \"&Figures!$B$3)")));
        List<String> heads = List.of(
                "Line",
                "Product",
                "Indicator",
                "Unit",
                "Per",
                "Up to",
                "Median",
                "Low",
                "High",
                "Studies",
                "Sources",
                "Why there is no figure, and what to ask");
        rows.add(heads.stream().map(Cell::head).toList());
        for (int i = 1; i <= TABLE_ROWS; i++) {
            rows.add(line(i, FIRST_TABLE_ROW + i - 1));
        }
        return new Sheet("Table", List.of(12, 24, 16, 14, 14, 14, 12, 12, 12, 10, 50, 50, 10), 0, rows)
                .withHidden(Set.of(HELPER))
                .withLaterLines(3);
    }

    /** One line of the answer, and each field of it, extracted by plain text functions, which all spreadsheets have. */
    private static List<Cell> line(int number, int row) {
        String line = "$M" + row;
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.number(number));
        for (int field : new int[] {0, 2, 3, 4, 5}) {
            cells.add(Cell.live("IFERROR(" + field(line, field) + ",\"\")"));
        }
        for (int field : new int[] {6, 7, 8, 9}) {
            String text = field(line, field);
            // Empty text would be parsed as 0.
            cells.add(Cell.live("IFERROR(IF(" + text + "=\"\",\"\",NUMBERVALUE(" + text + ",\".\",\",\")),\"\")"));
        }
        cells.add(Cell.live("IFERROR(" + field(line, 13) + ",\"\")").wrapped());
        cells.add(Cell.live("IFERROR(TRIM(" + field(line, 16) + "&\" \"&" + field(line, 17) + "),\"\")")
                .wrapped());
        cells.add(Cell.live("IFERROR(\"|\"&SUBSTITUTE(" + between("$M$8", "CHAR(10)", "$A" + row, "$A" + row + "+1")
                + ",CHAR(13),\"\")&\"|\",\"\")"));
        return cells;
    }

    /** A field of a line, counted from 0; every field has the separator before and after it. */
    private static String field(String line, int field) {
        return between(line, "\"|\"", Integer.toString(field + 1), Integer.toString(field + 2));
    }

    /** The text between two occurrences of a separator, given by their numbers. */
    private static String between(String text, String sign, String first, String second) {
        String start = "FIND(\"^\",SUBSTITUTE(" + text + "," + sign + ",\"^\"," + first + "))";
        String end = "FIND(\"^\",SUBSTITUTE(" + text + "," + sign + ",\"^\"," + second + "))";
        return "MID(" + text + "," + start + "+1," + end + "-" + start + "-1)";
    }

    private static Sheet notes() {
        List<String> lines = List.of(
                "LibreOffice: allow the update of links when the file opens; Ctrl+Shift+F9 recalculates everything.",
                "Excel for Windows: press Enable Editing and Enable Content; Ctrl+Alt+F9 recalculates everything. Excel for Mac and Excel in"
                        + " a browser have no WEBSERVICE.",
                "Google Sheets has no WEBSERVICE and fetches from its own servers: it needs a public address and IMPORTDATA, see /examples on the"
                        + " service.",
                "The service answers with a decimal point. NUMBERVALUE reads it in every locale; VALUE and plain arithmetic do not.",
                "A line that begins with # is a hint why there is no number, for instance a misspelt name and what it may have meant.",
                "/v1/products, /v1/indicators and /v1/units on the service list the names; /docs describes everything.",
                "Cite the publications in the column References, not this sheet. Information only; not medical, veterinary or legal"
                        + " advice.");
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(List.of(Cell.title("How this works")));
        lines.forEach(line -> rows.add(List.of(Cell.text(line).wrapped())));
        return new Sheet("Notes", List.of(100), 0, rows);
    }
}
