package counterstep.editor.canvas;

import java.awt.Image;
import java.util.Optional;

/** Where the drawing gets the small photos of near steps. */
interface Thumbnails {
    /** None: each photo is a plain frame. */
    Thumbnails NONE = (photo, width, height) -> Optional.empty();

    /**
     * A photo that fits into so many pixels of the drawing; empty where it is not there, or not
     * there yet: the drawing is then repainted when it has come.
     */
    Optional<Image> of(PhotoFace photo, int width, int height);
}
