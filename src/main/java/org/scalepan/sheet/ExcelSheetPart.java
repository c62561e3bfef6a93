package org.scalepan.sheet;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/** One worksheet of a workbook (ECMA-376, part 1, section 18.3); the order of its elements is fixed by the format. */
final class ExcelSheetPart {
    private static final String A4 = "9";

    private ExcelSheetPart() {}

    static byte[] of(Sheet sheet, ExcelStrings strings) {
        XmlPart part = new XmlPart().open("worksheet", "xmlns", ExcelFile.MAIN, "xmlns:r", ExcelFile.RELATIONS);
        part.open("sheetPr").empty("pageSetUpPr", "fitToPage", "1").close();
        part.empty("dimension", "ref", extent(sheet));
        views(part, sheet);
        columns(part, sheet);
        part.open("sheetData");
        for (int row = 0; row < sheet.rows().size(); row++) {
            List<Cell> cells = sheet.rows().get(row);
            if (!cells.isEmpty()) {
                part.open("row", "r", Integer.toString(row + 1));
                OptionalDouble height = RowHeight.of(cells, sheet.widths(), sheet.laterLines());
                if (height.isPresent()) {
                    part.with("ht", Double.toString(height.getAsDouble()), "customHeight", "1");
                }
                for (int column = 0; column < cells.size(); column++) {
                    cell(part, cells.get(column), CellRange.cell(column, row), strings);
                }
                part.close();
            }
        }
        part.close();
        part.empty(
                "pageMargins",
                "left",
                "0.4",
                "right",
                "0.4",
                "top",
                "0.5",
                "bottom",
                "0.6",
                "header",
                "0.3",
                "footer",
                "0.3");
        part.empty(
                "pageSetup",
                "paperSize",
                A4,
                "orientation",
                "landscape",
                "fitToWidth",
                Integer.toString(sheet.pagesAcross()),
                "fitToHeight",
                "0");
        part.open("headerFooter").holding("oddFooter", "&L&A&RPage &P of &N").close();
        if (!sheet.charts().isEmpty()) {
            part.empty("drawing", "r:id", "rId1");
        }
        return part.bytes();
    }

    /** From the first to the last cell; some readers read nothing outside it. */
    private static String extent(Sheet sheet) {
        int rows = sheet.rows().size();
        int columns = sheet.columns();
        return rows == 0 || columns == 0 ? "A1" : "A1:" + CellRange.cell(columns - 1, rows - 1);
    }

    private static void views(XmlPart part, Sheet sheet) {
        part.open("sheetViews").open("sheetView", "workbookViewId", "0");
        int rows = sheet.headRows();
        int columns = sheet.headColumns();
        if (rows > 0 || columns > 0) {
            part.open("pane");
            if (columns > 0) {
                part.with("xSplit", Integer.toString(columns));
            }
            if (rows > 0) {
                part.with("ySplit", Integer.toString(rows));
            }
            part.with("topLeftCell", CellRange.cell(columns, rows));
            part.with("activePane", columns == 0 ? "bottomLeft" : rows == 0 ? "topRight" : "bottomRight");
            part.with("state", "frozen").close();
        }
        part.close().close();
    }

    private static void columns(XmlPart part, Sheet sheet) {
        if (sheet.widths().isEmpty()) {
            return;
        }
        part.open("cols");
        for (int i = 0; i < sheet.widths().size(); i++) {
            String number = Integer.toString(i + 1);
            part.empty(
                    "col",
                    "min",
                    number,
                    "max",
                    number,
                    "width",
                    Integer.toString(sheet.widths().get(i)),
                    "customWidth",
                    "1",
                    "hidden",
                    sheet.hidden().contains(i) ? "1" : "0");
        }
        part.close();
    }

    private static void cell(XmlPart part, Cell cell, String name, ExcelStrings strings) {
        if (cell.equals(Cell.empty())) {
            return;
        }
        part.open("c", "r", name, "s", Integer.toString(ExcelStyles.of(cell)));
        if (cell.content() instanceof Cell.Text text) {
            part.with("t", "s").holding("v", Integer.toString(strings.number(text.text())));
        } else if (cell.content() instanceof Cell.NumberContent number) {
            part.holding("v", BigDecimal.valueOf(number.value()).toPlainString());
        } else if (cell.content() instanceof Cell.Live live) {
            part.holding("f", live.formula().excel());
        }
        part.close();
    }
}
