package counterstep.export.html;

import java.util.Map;

/**
 * A page for the PDF maker.
 *
 * @param html with photos under addresses that mean nothing elsewhere
 * @param photos what lies under each address
 */
public record PaperPage(String html, Map<String, byte[]> photos) {
    /** Copies the map. */
    public PaperPage {
        photos = Map.copyOf(photos);
    }

    /** A page without photos. */
    public static PaperPage without(String html) {
        return new PaperPage(html, Map.of());
    }
}
