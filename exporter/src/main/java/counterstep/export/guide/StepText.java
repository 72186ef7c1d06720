package counterstep.export.guide;

import static counterstep.export.guide.TextNode.Kind.BULLETS;
import static counterstep.export.guide.TextNode.Kind.CODE;
import static counterstep.export.guide.TextNode.Kind.CODE_BLOCK;
import static counterstep.export.guide.TextNode.Kind.DOCUMENT;
import static counterstep.export.guide.TextNode.Kind.EMPHASIS;
import static counterstep.export.guide.TextNode.Kind.ENTRY;
import static counterstep.export.guide.TextNode.Kind.HEADING;
import static counterstep.export.guide.TextNode.Kind.LINE_BREAK;
import static counterstep.export.guide.TextNode.Kind.LINK;
import static counterstep.export.guide.TextNode.Kind.NUMBERS;
import static counterstep.export.guide.TextNode.Kind.PARAGRAPH;
import static counterstep.export.guide.TextNode.Kind.QUOTE;
import static counterstep.export.guide.TextNode.Kind.RULE;
import static counterstep.export.guide.TextNode.Kind.SOFT_BREAK;
import static counterstep.export.guide.TextNode.Kind.STRONG;
import static counterstep.export.guide.TextNode.Kind.TEXT;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.BlockQuote;
import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.IndentedCodeBlock;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.ListItem;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.OrderedList;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ast.TextBase;
import com.vladsch.flexmark.ast.ThematicBreak;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a step's CommonMark once, into nodes of which none is dangerous in any format. */
final class StepText {
    private static final Parser PARSER = Parser.builder().build();
    private static final Pattern ADDRESS =
            Pattern.compile("(https?://|mailto:)[^\\s\\p{Cntrl}<>\"]+", Pattern.CASE_INSENSITIVE);

    /** Deeper than anyone writes; below it the text stands as it was typed. */
    private static final int DEEPEST = 40;

    private final Map<Class<? extends Node>, Function<Node, TextNode>> kinds =
            new LinkedHashMap<>();

    private int depth;

    private StepText() {
        kinds.put(Paragraph.class, node -> branch(PARAGRAPH, node));
        kinds.put(Heading.class, node -> branch(HEADING, node));
        kinds.put(BulletList.class, node -> branch(BULLETS, node));
        kinds.put(
                OrderedList.class,
                node ->
                        new TextNode(
                                NUMBERS,
                                Integer.toString(((OrderedList) node).getStartNumber()),
                                children(node)));
        kinds.put(ListItem.class, node -> branch(ENTRY, node));
        kinds.put(BlockQuote.class, node -> branch(QUOTE, node));
        kinds.put(FencedCodeBlock.class, node -> codeBlock(node));
        kinds.put(IndentedCodeBlock.class, node -> codeBlock(node));
        kinds.put(HtmlBlockBase.class, StepText::rawBlock);
        kinds.put(ThematicBreak.class, node -> TextNode.leaf(RULE, ""));
        kinds.put(Emphasis.class, node -> branch(EMPHASIS, node));
        kinds.put(StrongEmphasis.class, node -> branch(STRONG, node));
        kinds.put(Code.class, node -> TextNode.leaf(CODE, ((Code) node).getText().toString()));
        kinds.put(Link.class, node -> link(((Link) node).getUrl().unescape(), children(node)));
        kinds.put(AutoLink.class, node -> bareLink(((AutoLink) node).getText().toString(), ""));
        kinds.put(
                MailLink.class,
                node -> bareLink(((MailLink) node).getText().toString(), "mailto:"));
        kinds.put(Image.class, node -> text(((Image) node).getText().unescape()));
        kinds.put(HardLineBreak.class, node -> TextNode.leaf(LINE_BREAK, ""));
        kinds.put(SoftLineBreak.class, node -> TextNode.leaf(SOFT_BREAK, ""));
        kinds.put(HtmlInlineBase.class, node -> text(node.getChars().toString()));
        kinds.put(HtmlEntity.class, node -> text(node.getChars().unescape()));
        kinds.put(Text.class, node -> text(node.getChars().unescape()));
    }

    static TextNode parse(String text) {
        try {
            return new StepText().branch(DOCUMENT, PARSER.parse(text));
        } catch (StackOverflowError deep) {
            // The parser's own patterns recurse on lines of thousands of stars, hyphens or
            // brackets.
            TextNode asTyped = TextNode.of(PARAGRAPH, List.of(text(text)));
            return TextNode.of(DOCUMENT, List.of(asTyped));
        }
    }

    private TextNode branch(TextNode.Kind kind, Node node) {
        return TextNode.of(kind, children(node));
    }

    private List<TextNode> children(Node node) {
        List<TextNode> converted = new ArrayList<>();
        for (Node child : node.getChildren()) {
            if (child instanceof TextBase) {
                converted.addAll(children(child));
            } else if (!(child instanceof Reference)) {
                converted.add(convert(child));
            }
        }
        return converted;
    }

    private TextNode convert(Node node) {
        if (depth == DEEPEST) {
            return text(node.getChars().toString());
        }
        depth++;
        TextNode converted =
                kinds.entrySet().stream()
                        .filter(entry -> entry.getKey().isInstance(node))
                        .findFirst()
                        .map(entry -> entry.getValue().apply(node))
                        .orElseGet(() -> text(node.getChars().unescape()));
        depth--;
        return converted;
    }

    private static TextNode codeBlock(Node node) {
        StringBuilder lines = new StringBuilder();
        for (Node line : node.getChildren()) {
            lines.append(line.getChars());
        }
        if (lines.length() == 0) {
            lines.append(node.getChildChars());
        }
        return TextNode.leaf(CODE_BLOCK, lines.toString().stripTrailing());
    }

    private static TextNode rawBlock(Node node) {
        return TextNode.of(PARAGRAPH, List.of(text(node.getChars().toString().strip())));
    }

    /** A link where the address is one of the web or of mail; else its words and the address. */
    private static TextNode link(String address, List<TextNode> label) {
        if (ADDRESS.matcher(address).matches()) {
            return new TextNode(LINK, address, label);
        }
        return text(plain(label) + " (" + address + ")");
    }

    private static String plain(List<TextNode> nodes) {
        return nodes.stream()
                .map(node -> node.value() + plain(node.children()))
                .collect(Collectors.joining());
    }

    private static TextNode bareLink(String address, String scheme) {
        return link(scheme + address, List.of(text(address)));
    }

    private static TextNode text(String value) {
        return TextNode.leaf(TEXT, value);
    }
}
