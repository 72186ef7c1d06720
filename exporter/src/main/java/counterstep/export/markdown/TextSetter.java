package counterstep.export.markdown;

import counterstep.export.guide.TextNode;
import java.util.List;
import java.util.stream.Collectors;

/** Sets the text of a step again as CommonMark, of which every sign of the writer is escaped. */
final class TextSetter {
    private TextSetter() {}

    /** The blocks with an empty line between; empty where there is no text. */
    static String set(TextNode document) {
        return blocks(document.children());
    }

    private static String blocks(List<TextNode> nodes) {
        return nodes.stream().map(TextSetter::block).collect(Collectors.joining("\n\n"));
    }

    private static String block(TextNode node) {
        return switch (node.kind()) {
            case DOCUMENT -> blocks(node.children());
            case PARAGRAPH -> line(node);
            case HEADING -> "**" + line(node) + "**";
            case BULLETS -> entries(node, "* ");
            case NUMBERS -> entries(node, node.value() + ". ");
            case ENTRY -> blocks(node.children());
            case QUOTE -> indented(blocks(node.children()), "> ");
            case CODE_BLOCK -> fenced(node.value());
            case RULE -> "---";
            case TEXT, EMPHASIS, STRONG, CODE, LINK, LINE_BREAK, SOFT_BREAK -> inline(node);
        };
    }

    private static String inline(TextNode node) {
        return switch (node.kind()) {
            case TEXT -> Inline.escaped(node.value());
            case EMPHASIS -> "*" + line(node) + "*";
            case STRONG -> "**" + line(node) + "**";
            case CODE -> Inline.code(node.value());
            case LINK -> "[" + line(node) + "](<" + Inline.address(node.value()) + ">)";
            case LINE_BREAK -> "\\\n";
            case SOFT_BREAK -> "\n";
            case DOCUMENT, PARAGRAPH, HEADING, BULLETS, NUMBERS, ENTRY -> block(node);
            case QUOTE, CODE_BLOCK, RULE -> block(node);
        };
    }

    private static String line(TextNode node) {
        StringBuilder line = new StringBuilder();
        for (TextNode child : node.children()) {
            line.append(spaced(child));
        }
        return line.toString().strip();
    }

    /** Text keeps the blank at its ends, which stands between it and its neighbours. */
    private static String spaced(TextNode node) {
        String set = inline(node);
        if (node.kind() != TextNode.Kind.TEXT || node.value().isBlank()) {
            return node.kind() == TextNode.Kind.TEXT && !node.value().isEmpty() ? " " : set;
        }
        String before = node.value().startsWith(" ") ? " " : "";
        String after = node.value().endsWith(" ") ? " " : "";
        return before + set + after;
    }

    /** Stars, since the boxes of the actions below begin with hyphens: two lists, not one. */
    private static String entries(TextNode list, String bullet) {
        String rest = " ".repeat(bullet.length());
        return list.children().stream()
                .map(entry -> bullet + indented(blocks(entry.children()), rest).stripLeading())
                .collect(Collectors.joining("\n"));
    }

    static String indented(String text, String by) {
        return text.lines()
                .map(line -> line.isEmpty() ? by.stripTrailing() : by + line)
                .collect(Collectors.joining("\n"));
    }

    private static String fenced(String code) {
        String fence = "`".repeat(Math.max(3, Inline.longestRun(code) + 1));
        return fence + "\n" + code + "\n" + fence;
    }
}
