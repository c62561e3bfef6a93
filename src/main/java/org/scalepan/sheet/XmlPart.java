package org.scalepan.sheet;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** One file of XML inside a spreadsheet file, written from top to bottom. */
final class XmlPart {
    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter xml;

    XmlPart() {
        try {
            xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
            xml.writeStartDocument("UTF-8", "1.0");
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    /** Opens an element; attributes as name, value, name, value. */
    XmlPart open(String name, String... attributes) {
        try {
            xml.writeStartElement(name);
            return with(attributes);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    /** An element without content. */
    XmlPart empty(String name, String... attributes) {
        try {
            xml.writeEmptyElement(name);
            return with(attributes);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    /** Attributes of the element opened last. */
    XmlPart with(String... attributes) {
        try {
            for (int i = 0; i < attributes.length; i += 2) {
                xml.writeAttribute(attributes[i], legal(attributes[i + 1]));
            }
            return this;
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    XmlPart text(String text) {
        try {
            xml.writeCharacters(legal(text));
            return this;
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    /** Closes the element opened last. */
    XmlPart close() {
        try {
            xml.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    /** An element that holds text only. */
    XmlPart holding(String name, String text) {
        return open(name).text(text).close();
    }

    /** The whole part; elements that are still open are closed. */
    byte[] bytes() {
        try {
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Without the characters that no XML may hold (XML 1.0, section 2.2), which the writer would let through. */
    private static String legal(String text) {
        int[] kept = text.codePoints().filter(XmlPart::isLegal).toArray();
        return kept.length == text.codePointCount(0, text.length()) ? text : new String(kept, 0, kept.length);
    }

    private static boolean isLegal(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || (point >= 0x20 && point <= 0xD7FF)
                || (point >= 0xE000 && point <= 0xFFFD)
                || point >= 0x10000;
    }

    private static IllegalStateException impossible(XMLStreamException e) {
        return new IllegalStateException("text in memory can always be written as XML", e);
    }
}
