package counterstep.export.dita;

import java.io.StringWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * XML in the making. Text and attributes are the document's own words: none becomes markup, and
 * what XML 1.0 has no place for becomes U+FFFD. Elements that hold elements are indented.
 */
final class Xml {
    private static final String NOT_XML =
            "[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]";

    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter writer;

    /** For each open element, whether it has an element on a line of its own. */
    private final Deque<Boolean> broken = new ArrayDeque<>();

    Xml(String doctype) {
        try {
            writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
            writer.writeStartDocument("UTF-8", "1.0");
            writer.writeCharacters("\n");
            writer.writeDTD(doctype);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Begins an element on a line of its own; attributes are names and values in turn. */
    Xml open(String name, String... attributes) {
        ownLine();
        return inline(name, attributes);
    }

    /** Begins an element in the middle of text. */
    Xml inline(String name, String... attributes) {
        try {
            writer.writeStartElement(name);
            attributes(attributes);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
        broken.push(false);
        return this;
    }

    /** An element that holds nothing. */
    Xml empty(String name, String... attributes) {
        ownLine();
        try {
            writer.writeEmptyElement(name);
            attributes(attributes);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
        return this;
    }

    private void ownLine() {
        if (!broken.isEmpty()) {
            broken.pop();
            broken.push(true);
        }
        characters("\n" + "  ".repeat(broken.size()));
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int at = 0; at < attributes.length; at += 2) {
            writer.writeAttribute(attributes[at], known(attributes[at + 1]));
        }
    }

    Xml text(String words) {
        return characters(known(words));
    }

    Xml close() {
        boolean ownLine = broken.pop();
        if (ownLine) {
            characters("\n" + "  ".repeat(broken.size()));
        }
        try {
            writer.writeEndElement();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
        return this;
    }

    /** An element that holds words alone. */
    Xml element(String name, String words, String... attributes) {
        return open(name, attributes).text(words).close();
    }

    /** The same, left out where there is nothing to say. */
    Xml stated(String name, String words, String... attributes) {
        return words.isBlank() ? this : element(name, words.strip(), attributes);
    }

    private Xml characters(String plain) {
        try {
            writer.writeCharacters(plain);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
        return this;
    }

    private static String known(String words) {
        return words.replaceAll(NOT_XML, "\uFFFD");
    }

    @Override
    public String toString() {
        return out + "\n";
    }
}
