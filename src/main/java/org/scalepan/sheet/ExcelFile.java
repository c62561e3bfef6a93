package org.scalepan.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Sheets as an .xlsx workbook (ECMA-376). The same sheets give the same bytes. */
public final class ExcelFile {
    public static final String MEDIA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private static final int MOST_TEXT = 32_767;
    private static final String DIRECTORY = "[Content_Types].xml";

    private ExcelFile() {}

    public static byte[] of(List<Sheet> sheets) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Scalepan", null)) {
            sheets.forEach(sheet -> write(sheet, workbook.newWorksheet(sheet.name())));
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return withoutClock(out.toByteArray());
    }

    private static void write(Sheet sheet, Worksheet worksheet) {
        for (int column = 0; column < sheet.widths().size(); column++) {
            worksheet.width(column, sheet.widths().get(column));
        }
        if (sheet.headRows() > 0) {
            worksheet.freezePane(0, sheet.headRows());
        }
        for (int row = 0; row < sheet.rows().size(); row++) {
            List<Cell> cells = sheet.rows().get(row);
            for (int column = 0; column < cells.size(); column++) {
                write(cells.get(column), worksheet, row, column);
            }
        }
    }

    private static void write(Cell cell, Worksheet worksheet, int row, int column) {
        if (cell.content() instanceof Cell.Text text) {
            worksheet.value(row, column, fitting(text.text()));
        } else if (cell.content() instanceof Cell.NumberContent number) {
            worksheet.value(row, column, number.value());
        } else if (cell.content() instanceof Cell.Live live) {
            // The library writes formulas into the XML as they are.
            worksheet.formula(row, column, escaped(live.formula().excel()));
        }
        StyleSetter style = worksheet.style(row, column);
        switch (cell.look()) {
            case TITLE -> style.bold().set();
            case HEAD -> style.bold().wrapText(true).verticalAlignment("top").set();
            case INPUT -> style.fillColor("FFF2CC").format("@").set();
            case WRAPPED -> style.wrapText(true).verticalAlignment("top").set();
            case PLAIN -> {}
        }
    }

    /** Excel reports a file as corrupt when a cell holds more. */
    private static String fitting(String text) {
        return text.length() <= MOST_TEXT ? text : text.substring(0, MOST_TEXT - 1) + "…";
    }

    private static String escaped(String formula) {
        return formula.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** The library records the time of writing; the same sheets must give the same bytes. */
    private static byte[] withoutClock(byte[] workbook) {
        Map<String, byte[]> parts = ZipDirectory.read(workbook);
        parts.computeIfPresent(
                "docProps/core.xml",
                (name, part) -> new String(part, StandardCharsets.UTF_8)
                        .replaceAll("<dcterms:created.*?</dcterms:created>", "")
                        .getBytes(StandardCharsets.UTF_8));
        FixedZip zip = new FixedZip();
        // Readers look for the directory of the parts first.
        zip.with(DIRECTORY, java.util.Objects.requireNonNull(parts.remove(DIRECTORY)));
        parts.forEach(zip::with);
        return zip.bytes();
    }
}
