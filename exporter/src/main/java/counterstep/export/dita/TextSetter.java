package counterstep.export.dita;

import counterstep.export.guide.TextNode;
import java.util.List;

/** Sets the text of a step: paragraphs, lists, quotations, code, and what stands in a line. */
final class TextSetter {
    private final Xml xml;

    TextSetter(Xml xml) {
        this.xml = xml;
    }

    /** The blocks of a text, into an element that may hold blocks. */
    void blocks(List<TextNode> nodes) {
        nodes.forEach(node -> block(node, false));
    }

    private void block(TextNode node, boolean quoted) {
        switch (node.kind()) {
            case DOCUMENT -> blocks(node.children());
            case PARAGRAPH -> holding("p", node);
            case HEADING -> heading(node);
            case BULLETS -> list("ul", node);
            case NUMBERS -> list("ol", node);
            case ENTRY -> entry(node);
            case QUOTE -> quote(node, quoted);
            case CODE_BLOCK -> xml.element("pre", node.value());
            case RULE -> {}
            case TEXT, EMPHASIS, STRONG, CODE, LINK, LINE_BREAK, SOFT_BREAK -> inline(node);
        }
    }

    private void holding(String name, TextNode node) {
        xml.open(name);
        node.children().forEach(this::inline);
        xml.close();
    }

    private void heading(TextNode node) {
        xml.open("p").inline("b");
        node.children().forEach(this::inline);
        xml.close().close();
    }

    private void list(String name, TextNode node) {
        if (!node.children().isEmpty()) {
            xml.open(name);
            node.children().forEach(entry -> block(entry, false));
            xml.close();
        }
    }

    private void entry(TextNode node) {
        xml.open("li");
        blocks(node.children());
        xml.close();
    }

    /** A quotation right in another would break the grammar: it is set as a part of it. */
    private void quote(TextNode node, boolean quoted) {
        if (!quoted) {
            xml.open("lq");
        }
        node.children().forEach(child -> block(child, true));
        if (!quoted) {
            xml.close();
        }
    }

    private void inline(TextNode node) {
        switch (node.kind()) {
            case TEXT -> xml.text(node.value());
            case EMPHASIS -> within("i", node);
            case STRONG -> within("b", node);
            case CODE -> xml.inline("tt").text(node.value()).close();
            case LINK -> link(node);
            case LINE_BREAK, SOFT_BREAK -> xml.text("\n");
            case DOCUMENT, PARAGRAPH, HEADING, BULLETS, NUMBERS, ENTRY, QUOTE, CODE_BLOCK, RULE ->
                    block(node, false);
        }
    }

    private void link(TextNode node) {
        xml.inline("xref", "href", node.value(), "format", "html", "scope", "external");
        node.children().forEach(this::inline);
        xml.close();
    }

    private void within(String name, TextNode node) {
        xml.inline(name);
        node.children().forEach(this::inline);
        xml.close();
    }
}
