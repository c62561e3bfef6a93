package org.scalepan.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Sheets as an OpenDocument spreadsheet (.ods, OpenDocument 1.3, part 3). The same sheets give the same bytes. Pictures are left out. */
public final class CalcFile {
    public static final String MEDIA_TYPE = "application/vnd.oasis.opendocument.spreadsheet";
    private static final String NAMES = "urn:oasis:names:tc:opendocument:xmlns:";
    private static final double CENTIMETRES_PER_CHARACTER = 0.2;
    private static final int POINTS_OF_A_LINE = 13;
    private static final int MOST_POINTS = 400;
    private static final String PAGE = "Across";

    private CalcFile() {}

    public static byte[] of(List<Sheet> sheets) {
        return new FixedZip()
                // By the standard the first entry, stored, so that the kind of file shows in its first bytes.
                .with("mimetype", MEDIA_TYPE.getBytes(StandardCharsets.US_ASCII))
                .with("content.xml", content(sheets))
                .with("styles.xml", pages(sheets))
                .with("META-INF/manifest.xml", manifest())
                .bytes();
    }

    private static byte[] manifest() {
        XmlPart part = new XmlPart()
                .open("manifest:manifest", "xmlns:manifest", NAMES + "manifest:1.0", "manifest:version", "1.3");
        part.empty(
                "manifest:file-entry",
                "manifest:full-path",
                "/",
                "manifest:version",
                "1.3",
                "manifest:media-type",
                MEDIA_TYPE);
        List.of("content.xml", "styles.xml")
                .forEach(name -> part.empty(
                        "manifest:file-entry", "manifest:full-path", name, "manifest:media-type", "text/xml"));
        return part.bytes();
    }

    /** A4 across, a page layout for each number of pages side by side. */
    private static byte[] pages(List<Sheet> sheets) {
        List<Integer> across =
                sheets.stream().map(Sheet::pagesAcross).distinct().sorted().toList();
        XmlPart part = root("office:document-styles");
        part.open("office:automatic-styles");
        for (int pages : across) {
            part.open("style:page-layout", "style:name", "A4x" + pages);
            part.empty(
                    "style:page-layout-properties",
                    "fo:page-width",
                    "29.7cm",
                    "fo:page-height",
                    "21cm",
                    "style:print-orientation",
                    "landscape",
                    "fo:margin",
                    "1cm",
                    // LibreOffice's own attributes: so many pages wide, and as long as it takes.
                    "style:scale-to-X",
                    Integer.toString(pages),
                    "style:scale-to-Y",
                    "0");
            part.close();
        }
        part.close();
        part.open("office:master-styles");
        for (int pages : across) {
            part.empty("style:master-page", "style:name", PAGE + pages, "style:page-layout-name", "A4x" + pages);
        }
        return part.bytes();
    }

    private static XmlPart root(String name) {
        XmlPart part = new XmlPart().open(name);
        List.of("office", "style", "text", "table")
                .forEach(space -> part.with("xmlns:" + space, NAMES + space + ":1.0"));
        return part.with("xmlns:fo", NAMES + "xsl-fo-compatible:1.0", "xmlns:of", NAMES + "of:1.2")
                .with("office:version", "1.3");
    }

    private static byte[] content(List<Sheet> sheets) {
        XmlPart part = root("office:document-content");
        styles(part, sheets);
        part.open("office:body").open("office:spreadsheet");
        sheets.forEach(sheet -> sheet(part, sheet));
        return part.bytes();
    }

    private static void styles(XmlPart part, List<Sheet> sheets) {
        part.open("office:automatic-styles");
        TreeSet<Integer> widths = sheets.stream()
                .flatMap(sheet -> sheet.widths().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        for (int width : widths) {
            style(part, "w" + width, "table-column");
            part.empty(
                    "style:table-column-properties",
                    "style:column-width",
                    BigDecimal.valueOf(width * CENTIMETRES_PER_CHARACTER)
                                    .setScale(2, RoundingMode.HALF_EVEN)
                                    .toPlainString()
                            + "cm");
            part.close();
        }
        style(part, "row", "table-row");
        part.empty("style:table-row-properties", "style:use-optimal-row-height", "true")
                .close();
        sheets.stream()
                .map(Sheet::laterLines)
                .filter(lines -> lines > 1)
                .distinct()
                .forEach(lines -> {
                    style(part, "row" + lines, "table-row");
                    part.empty(
                                    "style:table-row-properties",
                                    "style:row-height",
                                    Math.min(MOST_POINTS, lines * POINTS_OF_A_LINE) + "pt",
                                    "style:use-optimal-row-height",
                                    "false")
                            .close();
                });
        sheets.stream().map(Sheet::pagesAcross).distinct().sorted().forEach(pages -> {
            style(part, "across" + pages, "table");
            part.with("style:master-page-name", PAGE + pages).empty("style:table-properties", "table:display", "true");
            part.close();
        });
        cellStyle(part, Cell.Look.PLAIN, false, "fo:wrap-option", "no-wrap");
        cellStyle(part, Cell.Look.TITLE, true, "fo:wrap-option", "no-wrap");
        cellStyle(part, Cell.Look.HEAD, true, "fo:wrap-option", "wrap");
        cellStyle(part, Cell.Look.HEAD_OF_NUMBERS, true, "fo:wrap-option", "wrap");
        cellStyle(part, Cell.Look.INPUT, false, "fo:background-color", "#fff2cc");
        cellStyle(part, Cell.Look.WRAPPED, false, "fo:wrap-option", "wrap");
        part.close();
    }

    private static void cellStyle(XmlPart part, Cell.Look look, boolean bold, String property, String value) {
        style(part, look.name(), "table-cell");
        part.empty("style:table-cell-properties", property, value, "style:vertical-align", "top");
        if (bold) {
            part.empty("style:text-properties", "fo:font-weight", "bold");
        }
        part.close();
    }

    private static void style(XmlPart part, String name, String family) {
        part.open("style:style", "style:name", name, "style:family", family);
    }

    private static void sheet(XmlPart part, Sheet sheet) {
        part.open("table:table", "table:name", sheet.name(), "table:style-name", "across" + sheet.pagesAcross());
        for (int i = 0; i < sheet.widths().size(); i++) {
            part.empty(
                    "table:table-column",
                    "table:style-name",
                    "w" + sheet.widths().get(i),
                    "table:visibility",
                    sheet.hidden().contains(i) ? "collapse" : "visible");
        }
        List<List<Cell>> rows = sheet.rows();
        if (sheet.headRows() > 0) {
            part.open("table:table-header-rows");
            rows.subList(0, sheet.headRows()).forEach(row -> row(part, row, sheet));
            part.close();
        }
        rows.subList(sheet.headRows(), rows.size()).forEach(row -> row(part, row, sheet));
        part.close();
    }

    private static void row(XmlPart part, List<Cell> row, Sheet sheet) {
        boolean later = sheet.laterLines() > 1
                && row.stream()
                        .anyMatch(cell -> cell.content() instanceof Cell.Live && cell.look() == Cell.Look.WRAPPED);
        part.open("table:table-row", "table:style-name", later ? "row" + sheet.laterLines() : "row");
        // A row without a cell is not allowed.
        (row.isEmpty() ? List.of(Cell.empty()) : row).forEach(cell -> cell(part, cell));
        part.close();
    }

    private static void cell(XmlPart part, Cell cell) {
        part.open("table:table-cell", "table:style-name", cell.look().name());
        if (cell.content() instanceof Cell.Text text) {
            part.with("office:value-type", "string").holding("text:p", text.text());
        } else if (cell.content() instanceof Cell.NumberContent number) {
            part.with(
                    "office:value-type",
                    "float",
                    "office:value",
                    BigDecimal.valueOf(number.value()).toPlainString());
        } else if (cell.content() instanceof Cell.Live live) {
            part.with("table:formula", live.formula().calc());
        }
        part.close();
    }
}
