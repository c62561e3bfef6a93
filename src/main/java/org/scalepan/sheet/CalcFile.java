package org.scalepan.sheet;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Sheets as an OpenDocument spreadsheet (.ods, OpenDocument 1.3, part 3). The same sheets give the same bytes. */
public final class CalcFile {
    public static final String MEDIA_TYPE = "application/vnd.oasis.opendocument.spreadsheet";
    private static final String NAMES = "urn:oasis:names:tc:opendocument:xmlns:";
    private static final double CENTIMETRES_PER_CHARACTER = 0.2;

    private final XMLStreamWriter xml;

    private CalcFile(XMLStreamWriter xml) {
        this.xml = xml;
    }

    public static byte[] of(List<Sheet> sheets) {
        StringWriter content = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(content);
            new CalcFile(xml).write(sheets);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("plain text can always be written as XML", e);
        }
        return new FixedZip()
                // By the standard the first entry, stored, so that the kind of file shows in its first bytes.
                .with("mimetype", MEDIA_TYPE.getBytes(StandardCharsets.US_ASCII))
                .with("content.xml", content.toString().getBytes(StandardCharsets.UTF_8))
                .with("META-INF/manifest.xml", manifest().getBytes(StandardCharsets.UTF_8))
                .bytes();
    }

    private static String manifest() {
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <manifest:manifest xmlns:manifest="%smanifest:1.0" manifest:version="1.3">
                  <manifest:file-entry manifest:full-path="/" manifest:version="1.3" manifest:media-type="%s"/>
                  <manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>
                </manifest:manifest>
                """.formatted(NAMES, MEDIA_TYPE);
    }

    private void write(List<Sheet> sheets) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeStartElement("office:document-content");
        for (String name : List.of("office", "style", "text", "table")) {
            xml.writeAttribute("xmlns:" + name, NAMES + name + ":1.0");
        }
        xml.writeAttribute("xmlns:fo", NAMES + "xsl-fo-compatible:1.0");
        xml.writeAttribute("xmlns:of", NAMES + "of:1.2");
        xml.writeAttribute("office:version", "1.3");
        styles(sheets);
        xml.writeStartElement("office:body");
        xml.writeStartElement("office:spreadsheet");
        for (Sheet sheet : sheets) {
            sheet(sheet);
        }
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void styles(List<Sheet> sheets) throws XMLStreamException {
        xml.writeStartElement("office:automatic-styles");
        TreeSet<Integer> widths = sheets.stream()
                .flatMap(sheet -> sheet.widths().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        for (int width : widths) {
            style("w" + width, "table-column");
            xml.writeEmptyElement("style:table-column-properties");
            xml.writeAttribute(
                    "style:column-width",
                    BigDecimal.valueOf(width * CENTIMETRES_PER_CHARACTER)
                                    .setScale(2, java.math.RoundingMode.HALF_EVEN)
                                    .toPlainString()
                            + "cm");
            xml.writeEndElement();
        }
        cellStyle(Cell.Look.TITLE, "fo:wrap-option", "no-wrap", "fo:font-weight", "bold");
        cellStyle(Cell.Look.HEAD, "fo:wrap-option", "wrap", "fo:font-weight", "bold");
        cellStyle(Cell.Look.INPUT, "fo:background-color", "#fff2cc", "", "");
        cellStyle(Cell.Look.WRAPPED, "fo:wrap-option", "wrap", "", "");
        xml.writeEndElement();
    }

    private void cellStyle(Cell.Look look, String property, String value, String ofText, String textValue)
            throws XMLStreamException {
        style(look.name(), "table-cell");
        xml.writeEmptyElement("style:table-cell-properties");
        xml.writeAttribute(property, value);
        xml.writeAttribute("style:vertical-align", "top");
        if (!ofText.isEmpty()) {
            xml.writeEmptyElement("style:text-properties");
            xml.writeAttribute(ofText, textValue);
        }
        xml.writeEndElement();
    }

    private void style(String name, String family) throws XMLStreamException {
        xml.writeStartElement("style:style");
        xml.writeAttribute("style:name", name);
        xml.writeAttribute("style:family", family);
    }

    private void sheet(Sheet sheet) throws XMLStreamException {
        xml.writeStartElement("table:table");
        xml.writeAttribute("table:name", sheet.name());
        for (int width : sheet.widths()) {
            xml.writeEmptyElement("table:table-column");
            xml.writeAttribute("table:style-name", "w" + width);
        }
        for (List<Cell> row : sheet.rows()) {
            xml.writeStartElement("table:table-row");
            // A row without a cell is not allowed.
            for (Cell cell : row.isEmpty() ? List.of(Cell.empty()) : row) {
                cell(cell);
            }
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private void cell(Cell cell) throws XMLStreamException {
        xml.writeStartElement("table:table-cell");
        if (cell.look() != Cell.Look.PLAIN) {
            xml.writeAttribute("table:style-name", cell.look().name());
        }
        if (cell.content() instanceof Cell.Text text) {
            xml.writeAttribute("office:value-type", "string");
            xml.writeStartElement("text:p");
            xml.writeCharacters(text.text());
            xml.writeEndElement();
        } else if (cell.content() instanceof Cell.NumberContent number) {
            xml.writeAttribute("office:value-type", "float");
            xml.writeAttribute(
                    "office:value", BigDecimal.valueOf(number.value()).toPlainString());
        } else if (cell.content() instanceof Cell.Live live) {
            xml.writeAttribute("table:formula", live.formula().calc());
        }
        xml.writeEndElement();
    }
}
