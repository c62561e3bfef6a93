package org.scalepan.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Sheets as an .xlsx workbook (ECMA-376, part 1, and part 2 for the package). The same sheets give the same bytes: there is no clock in it
 * and nothing is compressed.
 */
public final class ExcelFile {
    public static final String MEDIA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private static final String SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String DRAWING = "application/vnd.openxmlformats-officedocument.";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    /** Of relations between the parts, and of the attribute that points to one. */
    static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private final List<Sheet> sheets;
    private final ExcelStrings strings = new ExcelStrings();
    private final FixedZip zip = new FixedZip();

    private ExcelFile(List<Sheet> sheets) {
        this.sheets = List.copyOf(sheets);
    }

    public static byte[] of(List<Sheet> sheets) {
        return new ExcelFile(sheets).bytes();
    }

    private byte[] bytes() {
        // Readers look for the directory of the parts first.
        zip.with("[Content_Types].xml", directory());
        zip.with("_rels/.rels", relations(List.of(Map.entry("officeDocument", "xl/workbook.xml"))));
        zip.with("xl/workbook.xml", workbook());
        zip.with("xl/_rels/workbook.xml.rels", relations(parts()));
        zip.with("xl/styles.xml", ExcelStyles.part());
        int charts = 0;
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            zip.with("xl/worksheets/sheet" + (i + 1) + ".xml", ExcelSheetPart.of(sheet, strings));
            if (!sheet.charts().isEmpty()) {
                charts(sheet, i + 1, charts);
                charts += sheet.charts().size();
            }
        }
        zip.with("xl/sharedStrings.xml", strings.part());
        return zip.bytes();
    }

    /** The pictures of one sheet: where they lie, and each of them. */
    private void charts(Sheet sheet, int number, int before) {
        String drawing = "drawing" + number + ".xml";
        zip.with(
                "xl/worksheets/_rels/sheet" + number + ".xml.rels",
                relations(List.of(Map.entry("drawing", "../drawings/" + drawing))));
        zip.with("xl/drawings/" + drawing, ExcelChartPart.places(sheet.charts()));
        List<Map.Entry<String, String>> targets = new ArrayList<>();
        for (int i = 0; i < sheet.charts().size(); i++) {
            String chart = "chart" + (before + i + 1) + ".xml";
            targets.add(Map.entry("chart", "../charts/" + chart));
            zip.with("xl/charts/" + chart, ExcelChartPart.of(sheet.charts().get(i), sheet.name()));
        }
        zip.with("xl/drawings/_rels/" + drawing + ".rels", relations(targets));
    }

    private byte[] directory() {
        XmlPart part = new XmlPart().open("Types", "xmlns", PACKAGE + "content-types");
        part.empty(
                "Default",
                "Extension",
                "rels",
                "ContentType",
                "application/vnd.openxmlformats-package.relationships+xml");
        part.empty("Default", "Extension", "xml", "ContentType", "application/xml");
        listed(part, "/xl/workbook.xml", SPREADSHEET + "sheet.main+xml");
        listed(part, "/xl/styles.xml", SPREADSHEET + "styles+xml");
        listed(part, "/xl/sharedStrings.xml", SPREADSHEET + "sharedStrings+xml");
        int charts = 0;
        for (int i = 0; i < sheets.size(); i++) {
            listed(part, "/xl/worksheets/sheet" + (i + 1) + ".xml", SPREADSHEET + "worksheet+xml");
            if (!sheets.get(i).charts().isEmpty()) {
                listed(part, "/xl/drawings/drawing" + (i + 1) + ".xml", DRAWING + "drawing+xml");
            }
            for (int chart = 0; chart < sheets.get(i).charts().size(); chart++) {
                charts++;
                listed(part, "/xl/charts/chart" + charts + ".xml", DRAWING + "drawingml.chart+xml");
            }
        }
        return part.bytes();
    }

    private static void listed(XmlPart part, String name, String type) {
        part.empty("Override", "PartName", name, "ContentType", type);
    }

    private List<Map.Entry<String, String>> parts() {
        List<Map.Entry<String, String>> targets = new ArrayList<>();
        for (int i = 1; i <= sheets.size(); i++) {
            targets.add(Map.entry("worksheet", "worksheets/sheet" + i + ".xml"));
        }
        targets.add(Map.entry("styles", "styles.xml"));
        targets.add(Map.entry("sharedStrings", "sharedStrings.xml"));
        return targets;
    }

    /** Relations by kind and target; the first is called rId1. */
    private static byte[] relations(List<Map.Entry<String, String>> targets) {
        XmlPart part = new XmlPart().open("Relationships", "xmlns", PACKAGE + "relationships");
        for (int i = 0; i < targets.size(); i++) {
            part.empty(
                    "Relationship",
                    "Id",
                    "rId" + (i + 1),
                    "Type",
                    RELATIONS + "/" + targets.get(i).getKey(),
                    "Target",
                    targets.get(i).getValue());
        }
        return part.bytes();
    }

    private byte[] workbook() {
        XmlPart part = new XmlPart().open("workbook", "xmlns", MAIN, "xmlns:r", RELATIONS);
        part.open("sheets");
        for (int i = 0; i < sheets.size(); i++) {
            part.empty(
                    "sheet", "name", sheets.get(i).name(), "sheetId", Integer.toString(i + 1), "r:id", "rId" + (i + 1));
        }
        part.close();
        repeatedHeads(part);
        // The values of formulas are not in the file.
        part.empty("calcPr", "calcId", "0", "fullCalcOnLoad", "1");
        return part.bytes();
    }

    /** What is printed on every page of a sheet. */
    private void repeatedHeads(XmlPart part) {
        if (sheets.stream().noneMatch(sheet -> sheet.headRows() > 0)) {
            return;
        }
        part.open("definedNames");
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            if (sheet.headRows() > 0) {
                String name = CellRange.quoted(sheet.name());
                String columns = sheet.headColumns() > 0
                        ? name + "!$A:$" + CellRange.letters(sheet.headColumns() - 1) + ","
                        : "";
                part.open("definedName", "name", "_xlnm.Print_Titles", "localSheetId", Integer.toString(i))
                        .text(columns + name + "!$1:$" + sheet.headRows())
                        .close();
            }
        }
        part.close();
    }
}
