package counterstep.export.html;

import counterstep.export.guide.TextNode;

/** Sets the text of a step. */
final class TextSetter {
    private final Markup markup;

    TextSetter(Markup markup) {
        this.markup = markup;
    }

    void set(TextNode node) {
        Runnable act =
                switch (node.kind()) {
                    case DOCUMENT -> () -> children(node);
                    case PARAGRAPH -> () -> branch("p", node);
                    case HEADING -> () -> branch("p", node, "class", "head");
                    case BULLETS -> () -> branch("ul", node);
                    case NUMBERS -> () -> branch("ol", node, "start", node.value());
                    case ENTRY -> () -> branch("li", node);
                    case QUOTE -> () -> branch("blockquote", node);
                    case CODE_BLOCK -> () -> code(node);
                    case RULE -> () -> markup.open("hr");
                    case TEXT -> () -> markup.text(node.value());
                    case EMPHASIS -> () -> branch("em", node);
                    case STRONG -> () -> branch("strong", node);
                    case CODE -> () -> markup.element("code", node.value());
                    case LINK -> () -> branch("a", node, "href", node.value(), "rel", "noreferrer");
                    case LINE_BREAK -> () -> markup.open("br");
                    case SOFT_BREAK -> () -> markup.text("\n");
                };
        act.run();
    }

    private void branch(String element, TextNode node, String... attributes) {
        markup.open(element, attributes);
        children(node);
        markup.close();
    }

    private void children(TextNode node) {
        node.children().forEach(this::set);
    }

    private void code(TextNode node) {
        markup.open("pre").element("code", node.value()).close();
    }
}
