package counterstep.store;

import counterstep.input.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The photos of a document, in the folder {@code NAME.photos} beside it. Nothing outside of that
 * folder is ever read, not by a path in a name and not through a symbolic link.
 */
public final class PhotoFolder {
    private final Optional<Path> document;

    private PhotoFolder(Optional<Path> document) {
        this.document = document;
    }

    /** The photos of a procedure file; the folder need not be there. */
    public static PhotoFolder beside(Path procedureFile) {
        return new PhotoFolder(Optional.of(procedureFile));
    }

    /** The photos of a document that was never saved: none. */
    public static PhotoFolder none() {
        return new PhotoFolder(Optional.empty());
    }

    /** The bytes of a photo; empty if it is missing, outside, unreadable or too large. */
    public Optional<byte[]> bytes(String fileName) {
        return document.flatMap(file -> bytes(file, fileName));
    }

    private static Optional<byte[]> bytes(Path document, String fileName) {
        try {
            Path home = DiskFault.folder(document).toRealPath();
            Path folder = home.resolve(ProcedureFile.baseName(document) + ".photos").toRealPath();
            Path photo = folder.resolve(fileName).toRealPath();
            boolean inside =
                    folder.startsWith(home)
                            && folder.equals(photo.getParent())
                            && Files.isRegularFile(photo);
            return inside ? limited(photo) : Optional.empty();
        } catch (IOException | InvalidPathException notThere) {
            return Optional.empty();
        }
    }

    private static Optional<byte[]> limited(Path photo) throws IOException {
        try (InputStream in = Files.newInputStream(photo)) {
            byte[] bytes = in.readNBytes(Limits.PHOTO_BYTES + 1);
            return bytes.length > Limits.PHOTO_BYTES ? Optional.empty() : Optional.of(bytes);
        }
    }
}
