package org.scalepan.web.compare;

import java.io.StringWriter;
import java.util.OptionalDouble;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.scalepan.ask.NoFigure;
import org.scalepan.ask.Statistic;
import org.scalepan.ask.compare.EstimateTable;
import org.scalepan.factors.Library;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.InsteadAddress;

/** A table of estimates as small XML without namespaces, because spreadsheet functions that read XML fail on them. */
final class TableXml {
    private TableXml() {}

    static Answer of(Library library, EstimateTable table) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter writer = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
            writer.writeStartDocument("UTF-8", "1.0");
            writer.writeStartElement("table");
            writer.writeAttribute("library", library.version().digest());
            for (EstimateTable.QuotedRow row : table.rows()) {
                writer.writeStartElement("row");
                element(writer, "product", row.estimate().product().id());
                element(writer, "form", row.estimate().form());
                element(writer, "indicator", row.basis().indicator().id());
                element(writer, "unit", row.basis().indicator().unit());
                element(writer, "per", row.basis().per().id());
                element(writer, "boundary", row.basis().boundary().id());
                for (Statistic statistic : table.statistics()) {
                    element(writer, statistic.id(), plain(table.number(row, statistic)));
                }
                element(writer, "lowest_grade", row.lowestGrade());
                element(writer, "region_used", row.regionUsed());
                element(writer, "status", row.status());
                element(writer, "sources", row.sources());
                element(writer, "bound", row.estimate().bound().id());
                element(writer, "interval_of", row.estimate().intervalOf().orElse(""));
                element(
                        writer,
                        "reason",
                        row.none().map(none -> none.code().id()).orElse(""));
                element(
                        writer,
                        "ask_instead",
                        row.none()
                                .flatMap(NoFigure::instead)
                                .map(InsteadAddress::of)
                                .orElse(""));
                writer.writeEndElement();
            }
            writer.writeEndElement();
            writer.writeEndDocument();
            writer.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("plain text can always be written as XML", e);
        }
        return Answer.of(Answer.XML, out.toString());
    }

    private static String plain(OptionalDouble number) {
        return number.isPresent() ? SevenDigits.plain(number.getAsDouble()) : "";
    }

    private static void element(XMLStreamWriter writer, String name, String text) throws XMLStreamException {
        writer.writeStartElement(name);
        writer.writeCharacters(text);
        writer.writeEndElement();
    }
}
