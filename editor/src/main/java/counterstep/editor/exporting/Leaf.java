package counterstep.editor.exporting;

import java.awt.image.BufferedImage;

/** What the preview shows, one under the other. */
sealed interface Leaf {
    /** A printed page. */
    record Page(BufferedImage picture) implements Leaf {}

    /** A file that is text, or what hindered it. */
    record Text(String words) implements Leaf {}
}
