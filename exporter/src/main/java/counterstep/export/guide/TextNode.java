package counterstep.export.guide;

import java.util.List;

/**
 * One node of a step's text as it may be printed. What CommonMark allows beyond this (raw HTML,
 * pictures from elsewhere, links that are no web or mail address) has become plain text.
 *
 * @param kind what it is
 * @param value the text of a leaf, the address of a link, the first number of a list; else empty
 * @param children what it holds, in order
 */
public record TextNode(Kind kind, String value, List<TextNode> children) {
    /** The kinds of node; blocks first, then what stands in a line. */
    public enum Kind {
        DOCUMENT,
        PARAGRAPH,
        /** A heading inside a step: set like a paragraph, in bold. */
        HEADING,
        BULLETS,
        NUMBERS,
        ENTRY,
        QUOTE,
        CODE_BLOCK,
        RULE,
        TEXT,
        EMPHASIS,
        STRONG,
        CODE,
        LINK,
        LINE_BREAK,
        SOFT_BREAK
    }

    /** Copies the list. */
    public TextNode {
        children = List.copyOf(children);
    }

    static TextNode leaf(Kind kind, String value) {
        return new TextNode(kind, value, List.of());
    }

    static TextNode of(Kind kind, List<TextNode> children) {
        return new TextNode(kind, "", children);
    }

    /** Whether nothing would be printed. */
    public boolean isEmpty() {
        return kind == Kind.DOCUMENT && children.isEmpty();
    }
}
