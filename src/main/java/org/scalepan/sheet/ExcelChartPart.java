package org.scalepan.sheet;

import java.math.BigDecimal;
import java.util.List;

/** The pictures of a sheet: where they lie, and each by itself (ECMA-376, part 1, sections 20.5 and 21.2). */
final class ExcelChartPart {
    private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/";
    private static final String CHART = DRAWING + "chart";
    /** Columns and rows that a picture covers. */
    static final int COLUMNS = 8;

    static final int ROWS = 24;
    private static final String INK = "1B4F72";

    private ExcelChartPart() {}

    /** The places of pictures on their sheet. */
    static byte[] places(List<DotChart> charts) {
        XmlPart part = new XmlPart()
                .open("xdr:wsDr", "xmlns:xdr", DRAWING + "spreadsheetDrawing", "xmlns:a", DRAWING + "main");
        for (int i = 0; i < charts.size(); i++) {
            DotChart chart = charts.get(i);
            part.open("xdr:twoCellAnchor");
            corner(part, "xdr:from", chart.atColumn(), chart.atRow());
            corner(part, "xdr:to", chart.atColumn() + COLUMNS, chart.atRow() + ROWS);
            part.open("xdr:graphicFrame", "macro", "");
            part.open("xdr:nvGraphicFramePr")
                    .empty("xdr:cNvPr", "id", Integer.toString(i + 2), "name", chart.title(), "descr", chart.title())
                    .empty("xdr:cNvGraphicFramePr")
                    .close();
            part.open("xdr:xfrm")
                    .empty("a:off", "x", "0", "y", "0")
                    .empty("a:ext", "cx", "0", "cy", "0")
                    .close();
            part.open("a:graphic").open("a:graphicData", "uri", CHART);
            part.empty("c:chart", "xmlns:c", CHART, "xmlns:r", ExcelFile.RELATIONS, "r:id", "rId" + (i + 1));
            part.close().close().close();
            part.empty("xdr:clientData");
            part.close();
        }
        return part.bytes();
    }

    private static void corner(XmlPart part, String name, int column, int row) {
        part.open(name)
                .holding("xdr:col", Integer.toString(column))
                .holding("xdr:colOff", "0")
                .holding("xdr:row", Integer.toString(row))
                .holding("xdr:rowOff", "0")
                .close();
    }

    /** One picture of cells of the sheet that is named. */
    static byte[] of(DotChart chart, String sheet) {
        XmlPart part = new XmlPart().open("c:chartSpace", "xmlns:c", CHART, "xmlns:a", DRAWING + "main");
        part.open("c:chart");
        title(part, chart.title(), "1200");
        value(part, "c:autoTitleDeleted", "0");
        part.open("c:plotArea").empty("c:layout").open("c:lineChart");
        value(part, "c:grouping", "standard");
        value(part, "c:varyColors", "0");
        part.open("c:ser");
        value(part, "c:idx", "0");
        value(part, "c:order", "0");
        // Dots only: a line between products would mean nothing.
        part.open("c:spPr").open("a:ln").empty("a:noFill").close().close();
        part.open("c:marker");
        value(part, "c:symbol", "circle");
        value(part, "c:size", "9");
        part.open("c:spPr");
        fill(part);
        part.close().close();
        whiskers(part, chart, sheet);
        part.open("c:cat")
                .open("c:strRef")
                .holding("c:f", chart.names().onSheet(sheet))
                .close()
                .close();
        numbers(part, "c:val", chart.dots().onSheet(sheet));
        value(part, "c:smooth", "0");
        part.close();
        value(part, "c:marker", "1");
        value(part, "c:axId", "1");
        value(part, "c:axId", "2");
        part.close();
        nameAxis(part);
        scaleAxis(part, chart);
        part.close();
        value(part, "c:plotVisOnly", "1");
        value(part, "c:dispBlanksAs", "gap");
        return part.bytes();
    }

    private static void whiskers(XmlPart part, DotChart chart, String sheet) {
        part.open("c:errBars");
        value(part, "c:errDir", "y");
        value(part, "c:errBarType", "both");
        value(part, "c:errValType", "cust");
        value(part, "c:noEndCap", "0");
        numbers(part, "c:plus", chart.above().onSheet(sheet));
        numbers(part, "c:minus", chart.below().onSheet(sheet));
        part.open("c:spPr").open("a:ln", "w", "19050");
        fill(part);
        part.close().close().close();
    }

    private static void numbers(XmlPart part, String name, String range) {
        part.open(name).open("c:numRef").holding("c:f", range).close().close();
    }

    private static void nameAxis(XmlPart part) {
        part.open("c:catAx");
        value(part, "c:axId", "1");
        part.open("c:scaling");
        value(part, "c:orientation", "minMax");
        part.close();
        value(part, "c:delete", "0");
        value(part, "c:axPos", "b");
        value(part, "c:majorTickMark", "none");
        value(part, "c:minorTickMark", "none");
        value(part, "c:tickLblPos", "low");
        value(part, "c:crossAx", "2");
        value(part, "c:crosses", "min");
        part.close();
    }

    private static void scaleAxis(XmlPart part, DotChart chart) {
        part.open("c:valAx");
        value(part, "c:axId", "2");
        part.open("c:scaling");
        value(part, "c:logBase", "10");
        value(part, "c:orientation", "minMax");
        value(part, "c:max", BigDecimal.valueOf(chart.scaleTo()).toPlainString());
        value(part, "c:min", BigDecimal.valueOf(chart.scaleFrom()).toPlainString());
        part.close();
        value(part, "c:delete", "0");
        value(part, "c:axPos", "l");
        part.open("c:majorGridlines")
                .open("c:spPr")
                .open("a:ln", "w", "6350")
                .open("a:solidFill")
                .empty("a:srgbClr", "val", "D0D0D0")
                .close()
                .close()
                .close()
                .close();
        title(part, chart.unit(), "1000");
        part.empty("c:numFmt", "formatCode", "General", "sourceLinked", "0");
        value(part, "c:majorTickMark", "out");
        value(part, "c:minorTickMark", "none");
        value(part, "c:tickLblPos", "low");
        value(part, "c:crossAx", "1");
        value(part, "c:crosses", "min");
        part.close();
    }

    private static void title(XmlPart part, String text, String size) {
        part.open("c:title").open("c:tx").open("c:rich").empty("a:bodyPr").open("a:p");
        part.open("a:r")
                .empty("a:rPr", "lang", "en", "sz", size, "b", "0")
                .holding("a:t", text)
                .close();
        part.close().close().close();
        value(part, "c:overlay", "0");
        part.close();
    }

    private static void fill(XmlPart part) {
        part.open("a:solidFill").empty("a:srgbClr", "val", INK).close();
    }

    private static void value(XmlPart part, String name, String value) {
        part.empty(name, "val", value);
    }
}
