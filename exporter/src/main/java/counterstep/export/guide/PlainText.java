package counterstep.export.guide;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text of a step without format, for tables and for the voice. */
public final class PlainText {
    private final boolean addresses;

    private PlainText(boolean addresses) {
        this.addresses = addresses;
    }

    /**
     * One paragraph or entry of a list a line; entries with their mark, links with their address.
     */
    public static String written(TextNode document) {
        return String.join("\n", new PlainText(true).blocks(document));
    }

    /** The paragraphs and entries as they are said: no marks of lists, no addresses. */
    public static List<String> spoken(TextNode document) {
        return new PlainText(false).blocks(document);
    }

    private List<String> blocks(TextNode node) {
        return node.children().stream()
                .flatMap(this::block)
                .filter(line -> !line.isBlank())
                .map(String::strip)
                .toList();
    }

    private Stream<String> block(TextNode node) {
        return switch (node.kind()) {
            case DOCUMENT, QUOTE, ENTRY -> blocks(node).stream();
            case BULLETS -> node.children().stream().flatMap(entry -> entry(entry, "- "));
            case NUMBERS -> numbered(node);
            case PARAGRAPH, HEADING -> Stream.of(line(node));
            case CODE_BLOCK -> node.value().lines();
            case RULE -> Stream.empty();
            case TEXT, EMPHASIS, STRONG, CODE, LINK, LINE_BREAK, SOFT_BREAK ->
                    Stream.of(inline(node));
        };
    }

    private Stream<String> numbered(TextNode list) {
        long first = Long.parseLong(list.value());
        List<TextNode> entries = list.children();
        return Stream.iterate(0, place -> place < entries.size(), place -> place + 1)
                .flatMap(place -> entry(entries.get(place), first + place + ". "));
    }

    private Stream<String> entry(TextNode entry, String mark) {
        String text = String.join("\n", blocks(entry));
        return addresses ? Stream.of(mark + text) : text.lines();
    }

    private String line(TextNode node) {
        return node.children().stream().map(this::inline).collect(Collectors.joining());
    }

    private String inline(TextNode node) {
        return switch (node.kind()) {
            case TEXT, CODE -> node.value();
            case LINK -> link(node);
            case LINE_BREAK -> addresses ? "\n" : " ";
            case SOFT_BREAK -> " ";
            case EMPHASIS, STRONG, DOCUMENT, PARAGRAPH, HEADING, BULLETS, NUMBERS, ENTRY ->
                    line(node);
            case QUOTE, CODE_BLOCK, RULE -> line(node);
        };
    }

    private String link(TextNode node) {
        String label = line(node);
        boolean said = node.value().endsWith(label);
        return addresses && !said ? label + " (" + node.value() + ")" : label;
    }
}
