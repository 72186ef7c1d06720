package counterstep.editor.canvas;

import counterstep.editor.desk.PhotoStock;
import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import java.awt.Image;
import java.util.Optional;

/** The photos of what lies on the desk; the drawing is painted again when one has come. */
final class DeskThumbnails implements Thumbnails {
    private static final int SHARP = 2;

    /** The stock asks for no id: it knows photos by their files. */
    private static final PhotoId ANY = new PhotoId("p1");

    private final PhotoStock photos;
    private final Runnable repaint;

    DeskThumbnails(PhotoStock photos, Runnable repaint) {
        this.photos = photos;
        this.repaint = repaint;
    }

    @Override
    public Optional<Image> of(PhotoFace photo, int width, int height) {
        Photo asked = new Photo(ANY, photo.file(), "", "", photo.quarterTurns(), Extras.NONE);
        return photos.scaled(asked, SHARP * Math.max(width, height), repaint)
                .flatMap(ScaledPhoto::pixels);
    }
}
