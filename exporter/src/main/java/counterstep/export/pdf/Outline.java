package counterstep.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Bookmarks from the headings of a page: a step below the phase it stands in. */
final class Outline {
    private static final Set<String> HEADINGS = Set.of("h2", "h3");

    private final Document document;
    private final Element bookmarks;
    private Element section;
    private int number;

    private Outline(Document document) {
        this.document = document;
        this.bookmarks = document.createElement("bookmarks");
        this.section = bookmarks;
    }

    /** Adds them to the head of a page, and the subject of the document. */
    static void addTo(Document document, String subject) {
        Outline outline = new Outline(document);
        outline.headings(document.getDocumentElement()).forEach(outline::add);
        Node head = document.getElementsByTagName("head").item(0);
        Element description = document.createElement("meta");
        description.setAttribute("name", "description");
        description.setAttribute("content", subject);
        head.appendChild(description);
        if (outline.bookmarks.hasChildNodes()) {
            head.appendChild(outline.bookmarks);
        }
    }

    private List<Element> headings(Node within) {
        List<Element> found = new ArrayList<>();
        NodeList children = within.getChildNodes();
        for (int child = 0; child < children.getLength(); child++) {
            if (children.item(child) instanceof Element element) {
                if (HEADINGS.contains(element.getTagName())) {
                    found.add(element);
                }
                found.addAll(headings(element));
            }
        }
        return found;
    }

    private void add(Element heading) {
        number++;
        if (heading.getAttribute("id").isEmpty()) {
            heading.setAttribute("id", "heading-" + number);
        }
        Element bookmark = document.createElement("bookmark");
        bookmark.setAttribute("name", heading.getTextContent().strip());
        bookmark.setAttribute("href", "#" + heading.getAttribute("id"));
        if (heading.getTagName().equals("h2")) {
            bookmarks.appendChild(bookmark);
            section = bookmark;
        } else {
            section.appendChild(bookmark);
        }
    }
}
