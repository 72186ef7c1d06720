package counterstep.export.picture;

import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.store.PhotoFolder;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The photos of one document, each prepared once however many formats and steps show it. */
public final class Pictures {
    private static final int LONGEST_SIDE = 1200;

    private final PhotoFolder folder;
    private final Map<PhotoId, Picture> prepared = new ConcurrentHashMap<>();

    private Pictures(PhotoFolder folder) {
        this.folder = folder;
    }

    /** The photos in a folder; read when they are asked for. */
    public static Pictures in(PhotoFolder folder) {
        return new Pictures(folder);
    }

    /**
     * A photo turned as the document says and at most 1200 pixels on its longer side. Ways in which
     * the camera says to turn it are left out like all it wrote: the document's turns alone count.
     */
    public Picture of(Photo photo) {
        return prepared.computeIfAbsent(photo.id(), id -> prepare(photo));
    }

    private Picture prepare(Photo photo) {
        Optional<byte[]> bytes = folder.bytes(photo.file());
        if (bytes.isEmpty()) {
            return Picture.lacking("photo missing");
        }
        try {
            RawPicture raw = RawPicture.read(bytes.get(), LONGEST_SIDE);
            var turned = Pixels.turned(raw.pixels(), photo.quarterTurns());
            var scaled = Pixels.scaled(turned, LONGEST_SIDE);
            return Picture.shown(PictureEncoder.encode(scaled, raw.format()));
        } catch (IOException broken) {
            return Picture.lacking(broken.getMessage());
        }
    }
}
