package org.scalepan.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The content of the files; other tests open them in a real spreadsheet. */
class SheetFilesTest {
    private static final List<Sheet> SHEETS = List.of(
            new Sheet(
                    "One",
                    List.of(12),
                    1,
                    List.of(
                            List.of(Cell.head("Name & <sign>"), Cell.input("")),
                            List.of(),
                            List.of(Cell.text("=1+1"), Cell.number(-1.5), Cell.live("IF(A1<>\"&\",B1,\"\")")))),
            new Sheet("Two", List.of(), 0, List.of()));

    private static Map<String, String> parts(byte[] file) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    private static Document parsed(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void every_part_of_a_workbook_is_well_formed_xml_and_special_characters_survive() throws Exception {
        Map<String, String> parts = parts(ExcelFile.of(SHEETS));
        for (String part : parts.values()) {
            parsed(part);
        }

        Document sheet = parsed(parts.get("xl/worksheets/sheet1.xml"));
        assertEquals(
                "IF(A1<>\"&\",B1,\"\")", sheet.getElementsByTagName("f").item(0).getTextContent());
        String strings =
                parsed(parts.get("xl/sharedStrings.xml")).getDocumentElement().getTextContent();
        assertTrue(strings.contains("Name & <sign>"), strings);
        assertTrue(strings.contains("'=1+1"), "text that looks like a formula is guarded");
        assertEquals("[Content_Types].xml", parts.keySet().iterator().next());
    }

    @Test
    void every_part_of_a_calc_document_is_well_formed_xml_and_its_media_type_comes_first() throws Exception {
        Map<String, String> parts = parts(CalcFile.of(SHEETS));

        assertEquals("mimetype", parts.keySet().iterator().next());
        assertEquals(CalcFile.MEDIA_TYPE, parts.remove("mimetype"));
        for (String part : parts.values()) {
            parsed(part);
        }
        Document content = parsed(parts.get("content.xml"));
        assertEquals(2, content.getElementsByTagName("table:table").getLength());
    }

    @Test
    void the_same_sheets_give_the_same_bytes_at_any_time() throws Exception {
        for (Function<List<Sheet>, byte[]> writer :
                List.<Function<List<Sheet>, byte[]>>of(ExcelFile::of, CalcFile::of)) {
            byte[] first = writer.apply(SHEETS);
            // Longer than the clock needs to tick.
            Thread.sleep(20);
            assertArrayEquals(first, writer.apply(SHEETS));
        }
    }

    @Test
    void a_number_that_is_not_finite_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Cell.number(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Cell.number(Double.POSITIVE_INFINITY));
    }

    @Test
    void a_text_that_is_too_long_for_a_cell_of_excel_is_cut_with_a_sign() throws Exception {
        Sheet sheet = new Sheet("Long", List.of(), 0, List.of(List.of(Cell.text("x".repeat(40_000)))));

        String strings = parts(ExcelFile.of(List.of(sheet))).get("xl/sharedStrings.xml");
        assertEquals(
                "x".repeat(32_766) + "…",
                parsed(strings).getDocumentElement().getTextContent(),
                "Excel calls a file broken whose cell holds more");
    }

    @Test
    void a_file_is_the_same_bytes_in_every_time_zone() {
        TimeZone here = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
            byte[] there = CalcFile.of(SHEETS);
            TimeZone.setDefault(TimeZone.getTimeZone("UTC"));

            assertArrayEquals(there, CalcFile.of(SHEETS));
        } finally {
            TimeZone.setDefault(here);
        }
    }

    /** By hand from APPNOTE.TXT, 4.3.7, 4.3.12 and 4.3.16; the CRC-32 of "123456789" is known to be cbf43926 (Williams 1993). */
    @Test
    void a_zip_file_is_written_field_by_field_as_the_format_says() throws IOException {
        byte[] file = new FixedZip()
                .with("a", "123456789".getBytes(StandardCharsets.US_ASCII))
                .bytes();

        String both = "0008" + "0000" + "0000" + "2100" + "2639f4cb" + "09000000" + "09000000" + "0100" + "0000";
        String expected = "504b0304" + "1400" + both + "61" + "313233343536373839"
                + "504b0102" + "1400" + "1400" + both + "0000" + "0000" + "0000" + "00000000" + "00000000" + "61"
                + "504b0506" + "0000" + "0000" + "0100" + "0100" + "2f000000" + "28000000" + "0000";
        assertEquals(expected, HexFormat.of().formatHex(file));
        assertEquals(Map.of("a", "123456789"), parts(file));
    }

    @Test
    void a_sheet_says_its_true_extent_because_some_readers_read_nothing_outside_it() throws Exception {
        Map<String, String> parts = parts(ExcelFile.of(SHEETS));

        assertEquals("A1:C3", extent(parts.get("xl/worksheets/sheet1.xml")));
        assertEquals("A1", extent(parts.get("xl/worksheets/sheet2.xml")));
    }

    private static String extent(String sheet) throws Exception {
        return ((Element) parsed(sheet).getElementsByTagName("dimension").item(0)).getAttribute("ref");
    }

    @Test
    void a_sheet_is_printed_on_a4_across_with_its_head_and_its_names_on_every_page() throws Exception {
        Sheet sheet = new Sheet("It's", List.of(12, 12), 1, List.of(List.of(Cell.head("Name"), Cell.head("Value"))))
                .withHeadColumns(1);
        Map<String, String> parts = parts(ExcelFile.of(List.of(sheet)));

        Element page = (Element) parsed(parts.get("xl/worksheets/sheet1.xml"))
                .getElementsByTagName("pageSetup")
                .item(0);
        assertEquals("9", page.getAttribute("paperSize"), "9 is A4: ECMA-376, part 1, section 18.3.1.63");
        assertEquals("landscape", page.getAttribute("orientation"));
        assertEquals("1", page.getAttribute("fitToWidth"));
        assertEquals(
                "'It''s'!$A:$A,'It''s'!$1:$1",
                parsed(parts.get("xl/workbook.xml"))
                        .getElementsByTagName("definedName")
                        .item(0)
                        .getTextContent());
    }

    @Test
    void a_figure_shows_two_significant_digits_and_keeps_all_of_them() throws Exception {
        assertEquals("0", NumberForm.ofFigure(146.2008).code());
        assertEquals("0", NumberForm.ofFigure(16.9).code());
        assertEquals("0.0", NumberForm.ofFigure(1.69).code());
        assertEquals("0.000", NumberForm.ofFigure(0.03125).code());
        assertEquals("0.0E+00", NumberForm.ofFigure(1e-9).code());
        assertEquals("0", NumberForm.ofFigure(0).code());

        Sheet sheet =
                new Sheet("One", List.of(), 0, List.of(List.of(Cell.number(146.2008, NumberForm.ofFigure(146.2008)))));
        String written = parts(ExcelFile.of(List.of(sheet))).get("xl/worksheets/sheet1.xml");
        assertEquals(
                "146.2008", parsed(written).getElementsByTagName("v").item(0).getTextContent());
    }

    @Test
    void a_picture_begins_and_ends_at_powers_of_ten_around_its_whiskers() throws Exception {
        DotChart chart = new DotChart(
                "Title",
                "kg",
                new CellRange(0, 1, 2),
                new CellRange(1, 1, 2),
                new CellRange(2, 1, 2),
                new CellRange(3, 1, 2),
                7.3,
                250,
                1,
                5);
        Sheet sheet = new Sheet("Chart", List.of(), 0, List.of(List.of(Cell.text("x")))).withCharts(List.of(chart));
        Map<String, String> parts = parts(ExcelFile.of(List.of(sheet)));
        for (String part : parts.values()) {
            parsed(part);
        }

        Document picture = parsed(parts.get("xl/charts/chart1.xml"));
        assertEquals("1.0", value(picture, "c:min"));
        assertEquals("1000.0", value(picture, "c:max"));
        assertEquals(
                "'Chart'!$A$2:$A$3", picture.getElementsByTagName("c:f").item(2).getTextContent());
    }

    private static String value(Document part, String element) {
        return ((Element) part.getElementsByTagName(element).item(0)).getAttribute("val");
    }

    @Test
    void a_character_that_no_xml_may_hold_becomes_a_blank() throws Exception {
        Sheet sheet = new Sheet("One", List.of(), 0, List.of(List.of(Cell.text("bell\u0007 \uD800 ok"))));

        assertEquals(
                "bell    ok",
                parsed(parts(ExcelFile.of(List.of(sheet))).get("xl/sharedStrings.xml"))
                        .getDocumentElement()
                        .getTextContent());
    }

    @Test
    void a_row_is_high_enough_for_its_longest_text() {
        assertEquals(3, RowHeight.lines("one two three", 5));
        assertEquals(2, RowHeight.lines("abcdefghij", 5));
        assertEquals(1, RowHeight.lines("", 5));
    }

    @Test
    void two_entries_of_one_name_are_refused() {
        FixedZip zip = new FixedZip().with("a", new byte[0]);
        assertThrows(IllegalArgumentException.class, () -> zip.with("a", new byte[0]));
    }
}
