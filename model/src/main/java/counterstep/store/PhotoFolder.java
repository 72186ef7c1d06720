package counterstep.store;

import counterstep.input.BadInput;
import counterstep.input.Limits;
import counterstep.model.Photo;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The photos of a document, in the folder {@code NAME.photos} beside it. Nothing outside of that
 * folder is ever read, not by a path in a name and not through a symbolic link.
 */
public final class PhotoFolder {
    private final Function<String, Optional<byte[]>> source;

    private PhotoFolder(Function<String, Optional<byte[]>> source) {
        this.source = source;
    }

    /** The photos of a procedure file; the folder need not be there. */
    public static PhotoFolder beside(Path procedureFile) {
        return new PhotoFolder(fileName -> bytes(procedureFile, fileName));
    }

    /** The photos of a document that was never saved: none. */
    public static PhotoFolder none() {
        return new PhotoFolder(fileName -> Optional.empty());
    }

    /** Photos that lie elsewhere than on the disk, in the program itself say. */
    public static PhotoFolder of(Function<String, Optional<byte[]>> source) {
        return new PhotoFolder(source);
    }

    /** These photos first, then those of another folder. */
    public PhotoFolder or(PhotoFolder other) {
        return new PhotoFolder(name -> bytes(name).or(() -> other.bytes(name)));
    }

    /**
     * Puts photos into the folder beside a procedure file, as they are, byte for byte. A photo that
     * is to be found nowhere is left out.
     *
     * @param photos which
     * @param from where they lie so far
     * @param procedureFile the file beside which they shall lie; it need not be there yet
     * @param afresh whether those of the same name that lie there are replaced
     * @throws BadInput if the folder is a link that leads elsewhere, or the disk refuses
     */
    public static void copy(
            List<Photo> photos, PhotoFolder from, Path procedureFile, boolean afresh) {
        Path folder = folderOf(procedureFile);
        OutputFolder output = OutputFolder.at(folder);
        for (Photo photo : photos) {
            requireOwn(folder);
            if (afresh || !Files.exists(folder.resolve(photo.file()))) {
                from.bytes(photo.file()).ifPresent(bytes -> output.write(photo.file(), bytes));
            }
        }
    }

    private static Path folderOf(Path procedureFile) {
        return DiskFault.folder(procedureFile)
                .resolve(ProcedureFile.baseName(procedureFile) + ".photos");
    }

    private static void requireOwn(Path folder) {
        if (Files.isSymbolicLink(folder)) {
            throw new BadInput(
                    DiskFault.name(folder),
                    "the folder of photos is a link to another place",
                    "put a real folder there");
        }
    }

    /** The bytes of a photo; empty if it is missing, outside, unreadable or too large. */
    public Optional<byte[]> bytes(String fileName) {
        return source.apply(fileName);
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
