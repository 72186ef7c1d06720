package counterstep.editor.desk;

import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Photo;
import counterstep.store.PhotoFolder;
import counterstep.store.PhotoPile;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The photos of what lies open: those beside its file, and those added since, which lie in a
 * temporary file until they are saved. What an undo takes out of the document stays here for the
 * redo. Used on the event thread only; what it gives out may go to any thread.
 */
public final class PhotoStock {
    private final Set<String> added = new HashSet<>();
    private final PhotoCache cache = new PhotoCache();
    private PhotoFolder beside = PhotoFolder.none();
    private PhotoFolder all = PhotoFolder.none();
    private PhotoPile pile = new PhotoPile();
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

    /** Where photos of this document are laid before they are added; another has another. */
    public PhotoPile pile() {
        return pile;
    }

    /** Takes in a photo that lies on the pile; the document then names it by its file name. */
    public void add(String fileName) {
        added.add(fileName);
        all = addedOnes().or(beside);
        cache.forget(fileName); // it may have been asked for while it was missing
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
        pile = new PhotoPile();
        cache.clear();
        beside = photos;
        hasFile = besideItsFile;
        all = photos;
    }

    /** Takes in what was kept over a crash. */
    void takeBack(List<Photo> photos, PhotoFolder kept) {
        for (Photo photo : photos) {
            kept.bytes(photo.file()).ifPresent(bytes -> takeBack(photo.file(), bytes));
        }
    }

    private void takeBack(String fileName, byte[] bytes) {
        pile.add(fileName, bytes);
        add(fileName);
    }

    private PhotoFolder addedOnes() {
        Set<String> now = Set.copyOf(added);
        PhotoPile lying = pile;
        return PhotoFolder.of(name -> now.contains(name) ? lying.bytes(name) : Optional.empty());
    }
}
