package counterstep.export.picture;

import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.store.PhotoFolder;
import java.io.IOException;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The photos of one document, each prepared once however many formats and steps show it. */
public final class Pictures {
    private final PhotoFolder folder;
    private final int longest;
    private final Map<PhotoId, Picture> prepared = new ConcurrentHashMap<>();

    private Pictures(PhotoFolder folder, int longest) {
        this.folder = folder;
        this.longest = longest;
    }

    /**
     * The photos in a folder; read when they are asked for.
     *
     * @param longest the longer side at most, in pixels
     */
    public static Pictures in(PhotoFolder folder, int longest) {
        return new Pictures(folder, longest);
    }

    /**
     * A photo turned as the document says and scaled down. Ways in which the camera says to turn it
     * are left out like all it wrote: the document's turns alone count.
     */
    public Picture of(Photo photo) {
        return prepared.computeIfAbsent(photo.id(), id -> prepare(photo));
    }

    /** Prepares photos that will be asked for, as many at a time as there are processors. */
    public void prepare(Collection<Photo> photos) {
        photos.parallelStream().forEach(this::of);
    }

    private Picture prepare(Photo photo) {
        Optional<byte[]> bytes = folder.bytes(photo.file());
        if (bytes.isEmpty()) {
            return Picture.lacking("photo missing");
        }
        try {
            RawPicture raw = RawPicture.read(bytes.get(), longest);
            var turned = Pixels.turned(raw.pixels(), photo.quarterTurns());
            var scaled = Pixels.scaled(turned, longest);
            return Picture.shown(PictureEncoder.encode(scaled, raw.format()));
        } catch (IOException broken) {
            return Picture.lacking(broken.getMessage());
        }
    }
}
