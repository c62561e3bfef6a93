package org.scalepan.sheet;

import java.util.ArrayList;
import java.util.List;

/** The styles of a workbook: one for each look, and one for each form of a number (ECMA-376, part 1, section 18.8). */
final class ExcelStyles {
    private static final List<Cell.Look> LOOKS = List.of(Cell.Look.values());
    private static final List<NumberForm> FORMS = List.of(NumberForm.values());
    /** Numbers of formats below this are built in. */
    private static final int FIRST_OWN_FORMAT = 164;

    private static final int TEXT_FORMAT = FIRST_OWN_FORMAT + FORMS.size();
    private static final String REGULAR = "0";
    private static final String BOLD = "1";
    private static final String NO_FILL = "0";
    private static final String YELLOW = "2";
    private static final String[] WRAPPED = {"wrapText", "1"};

    private ExcelStyles() {}

    /** The place of a cell's style in the list of styles; 0 is the plain one. */
    static int of(Cell cell) {
        int looks = LOOKS.size();
        if (cell.look() == Cell.Look.PLAIN && cell.content() instanceof Cell.NumberContent number) {
            return looks + FORMS.indexOf(number.form());
        }
        if (cell.look() == Cell.Look.PLAIN && cell.content() instanceof Cell.Text) {
            return looks + FORMS.size();
        }
        return LOOKS.indexOf(cell.look());
    }

    static byte[] part() {
        XmlPart part = new XmlPart().open("styleSheet", "xmlns", ExcelFile.MAIN);
        part.open("numFmts", "count", Integer.toString(FORMS.size() + 1));
        FORMS.forEach(
                form -> part.empty("numFmt", "numFmtId", Integer.toString(format(form)), "formatCode", form.code()));
        part.empty("numFmt", "numFmtId", Integer.toString(TEXT_FORMAT), "formatCode", "@");
        part.close();
        part.open("fonts", "count", "2");
        part.open("font")
                .empty("sz", "val", "10")
                .empty("name", "val", "Calibri")
                .close();
        part.open("font")
                .empty("b")
                .empty("sz", "val", "10")
                .empty("name", "val", "Calibri")
                .close();
        part.close();
        part.open("fills", "count", "3");
        // The first two are fixed by the format.
        List.of("none", "gray125")
                .forEach(kind -> part.open("fill")
                        .empty("patternFill", "patternType", kind)
                        .close());
        part.open("fill")
                .open("patternFill", "patternType", "solid")
                .empty("fgColor", "rgb", "FFFFF2CC")
                .close()
                .close();
        part.close();
        part.open("borders", "count", "1").open("border");
        List.of("left", "right", "top", "bottom", "diagonal").forEach(part::empty);
        part.close().close();
        part.open("cellStyleXfs", "count", "1");
        part.empty("xf", "numFmtId", "0", "fontId", REGULAR, "fillId", NO_FILL, "borderId", "0");
        part.close();
        cellStyles(part);
        return part.bytes();
    }

    private static void cellStyles(XmlPart part) {
        List<Runnable> styles = new ArrayList<>();
        for (Cell.Look look : LOOKS) {
            styles.add(
                    switch (look) {
                        case PLAIN, TITLE ->
                            () -> style(part, 0, look == Cell.Look.TITLE ? BOLD : REGULAR, NO_FILL, "");
                        case HEAD -> () -> style(part, 0, BOLD, NO_FILL, "left").with(WRAPPED);
                        case HEAD_OF_NUMBERS ->
                            () -> style(part, 0, BOLD, NO_FILL, "right").with(WRAPPED);
                        case INPUT -> () -> style(part, TEXT_FORMAT, REGULAR, YELLOW, "");
                        case WRAPPED ->
                            () -> style(part, 0, REGULAR, NO_FILL, "left").with(WRAPPED);
                    });
        }
        FORMS.forEach(form -> styles.add(() -> style(part, format(form), REGULAR, NO_FILL, "")));
        styles.add(() -> style(part, 0, REGULAR, NO_FILL, "left"));
        part.open("cellXfs", "count", Integer.toString(styles.size()));
        styles.forEach(style -> {
            style.run();
            part.close().close();
        });
        part.close();
    }

    private static int format(NumberForm form) {
        return form == NumberForm.AS_IT_IS ? 0 : FIRST_OWN_FORMAT + FORMS.indexOf(form);
    }

    /** Opens a style and its alignment. */
    private static XmlPart style(XmlPart part, int format, String font, String fill, String side) {
        part.open(
                "xf",
                "numFmtId",
                Integer.toString(format),
                "fontId",
                font,
                "fillId",
                fill,
                "borderId",
                "0",
                "xfId",
                "0",
                "applyNumberFormat",
                "1",
                "applyAlignment",
                "1");
        // Long texts make rows high: everything else of the row stands at their first line.
        part.open("alignment", "vertical", "top");
        // Texts keep a distance from numbers, which end at the right of the column before.
        return side.isEmpty() ? part : part.with("horizontal", side, "indent", side.equals("left") ? "1" : "0");
    }
}
