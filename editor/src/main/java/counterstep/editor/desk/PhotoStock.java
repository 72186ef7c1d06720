package counterstep.editor.desk;

import counterstep.export.picture.Original;
import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Photo;
import counterstep.store.PhotoFolder;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The photos of what lies open: those beside its file, and those added since, which stay in memory
 * until they are saved. What an undo takes out of the document stays here for the redo. Used on the
 * event thread only; a {@link PhotoFolder} that it gives out may go to any thread.
 */
public final class PhotoStock {
    private final Map<String, byte[]> added = new HashMap<>();
    private final PhotoCache cache = new PhotoCache();
    private PhotoFolder beside = PhotoFolder.none();
    private PhotoFolder all = PhotoFolder.none();
    private boolean hasFile;

    PhotoStock() {}

    /** All that there are now, wherever they lie; the same folder until there are others. */
    public PhotoFolder folder() {
        return all;
    }

    /** Those that a crash would lose: all of them if the document has no file. */
    public PhotoFolder atRisk() {
        return hasFile ? addedOnes() : folder();
    }

    /** Takes a photo in; the document then names it by its file name. */
    public void add(Original photo) {
        take(photo.fileName(), photo.bytes());
    }

    /** These photos of a document now lie beside that file as well. */
    public void saved(List<Photo> photos, Path file) {
        photos.forEach(photo -> added.remove(photo.file()));
        beside = PhotoFolder.beside(file).or(beside); // what an undo brings back is found there
        hasFile = true;
        all = addedOnes().or(beside);
    }

    /**
     * A photo for the screen, turned as the document says.
     *
     * @param photo which
     * @param longest how many pixels its longer side needs; it may come with up to twice as many
     * @param ready runs on the event thread as soon as it is worth asking again; not if it is here
     * @return the photo, or its trouble; empty while it is being read
     */
    public Optional<ScaledPhoto> scaled(Photo photo, int longest, Runnable ready) {
        return cache.get(photo, longest, folder(), ready);
    }

    /** Another document is laid on the desk. */
    void lay(PhotoFolder photos, boolean besideItsFile) {
        added.clear();
        cache.clear();
        beside = photos;
        hasFile = besideItsFile;
        all = photos;
    }

    /** Takes in what was kept over a crash. */
    void takeBack(List<Photo> photos, PhotoFolder kept) {
        for (Photo photo : photos) {
            kept.bytes(photo.file()).ifPresent(bytes -> take(photo.file(), bytes));
        }
    }

    private void take(String fileName, byte[] bytes) {
        added.put(fileName, bytes);
        all = addedOnes().or(beside);
        cache.forget(fileName); // it may have been asked for while it was missing
    }

    private PhotoFolder addedOnes() {
        Map<String, byte[]> now = Map.copyOf(added);
        return PhotoFolder.of(name -> Optional.ofNullable(now.get(name)));
    }
}
