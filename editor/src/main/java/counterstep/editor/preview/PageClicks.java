package counterstep.editor.preview;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.events.Event;
import org.w3c.dom.events.EventTarget;

/** What is clicked in the page: a link, which the page does not follow, or a step. */
final class PageClicks {
    private static final Pattern STEP = Pattern.compile("step-(\\d{1,9})");

    private final IntConsumer steps;
    private final Consumer<URI> links;

    private PageClicks(IntConsumer steps, Consumer<URI> links) {
        this.steps = steps;
        this.links = links;
    }

    /** Tells the clicks on a page. */
    static void listen(Document page, IntConsumer steps, Consumer<URI> links) {
        PageClicks clicks = new PageClicks(steps, links);
        ((EventTarget) page).addEventListener("click", clicks::clicked, true);
    }

    /** The innermost link or step that holds what was clicked. */
    private void clicked(Event event) {
        Node node = (Node) event.getTarget();
        while (node != null) {
            Optional<String> link = attribute(node, "href");
            Optional<Integer> step = attribute(node, "id").flatMap(PageClicks::number);
            if (link.isPresent()) {
                event.preventDefault();
                address(link.get()).ifPresent(links);
                return;
            }
            if (step.isPresent()) {
                steps.accept(step.get());
                return;
            }
            node = node.getParentNode();
        }
    }

    /** This DOM gives null where a node has no such attribute. */
    private static Optional<String> attribute(Node node, String name) {
        return node instanceof Element element
                ? Optional.ofNullable(element.getAttribute(name)).filter(value -> !value.isEmpty())
                : Optional.empty();
    }

    private static Optional<Integer> number(String id) {
        Matcher step = STEP.matcher(id);
        return step.matches() ? Optional.of(Integer.valueOf(step.group(1))) : Optional.empty();
    }

    private static Optional<URI> address(String link) {
        try {
            return Optional.of(new URI(link));
        } catch (URISyntaxException notAnAddress) {
            return Optional.empty();
        }
    }
}
