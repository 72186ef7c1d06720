package counterstep.export.picture;

import counterstep.model.Photo;
import counterstep.store.PhotoFolder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;

/**
 * A photo as a screen shows it: turned as the document says, scaled down.
 *
 * @param pixels what it shows; empty where the file is missing or broken
 * @param trouble why it is empty, in a few words: 'photo missing'; empty where it is not
 */
public record ScaledPhoto(Optional<BufferedImage> pixels, String trouble) {
    /**
     * Reads and scales; slow for large photos.
     *
     * @param photo which, and its turns
     * @param folder where it lies
     * @param longest its longer side at most, in pixels; it is never scaled up
     */
    public static ScaledPhoto of(Photo photo, PhotoFolder folder, int longest) {
        Optional<byte[]> bytes = folder.bytes(photo.file());
        if (bytes.isEmpty()) {
            return new ScaledPhoto(Optional.empty(), "photo missing");
        }
        try {
            BufferedImage raw = RawPicture.read(bytes.get(), longest).pixels();
            BufferedImage turned = Pixels.turned(raw, photo.quarterTurns());
            return new ScaledPhoto(Optional.of(Pixels.scaled(turned, longest)), "");
        } catch (IOException broken) {
            return new ScaledPhoto(Optional.empty(), String.valueOf(broken.getMessage()));
        }
    }
}
