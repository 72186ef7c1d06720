package counterstep.store;

import counterstep.input.BadInput;
import counterstep.input.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file that the writer chose to add as a photo, wherever it lies; it is only read. */
public final class PhotoFile {
    private PhotoFile() {}

    /**
     * All of it, as it is.
     *
     * @throws BadInput if it is no file, cannot be read, or is larger than a photo may be
     */
    public static byte[] read(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new BadInput(DiskFault.name(file), "no file", "choose a photo");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(Limits.PHOTO_BYTES + 1);
            if (bytes.length > Limits.PHOTO_BYTES) {
                throw new BadInput(
                        DiskFault.name(file),
                        "more than " + (Limits.PHOTO_BYTES >> 20) + " MiB",
                        "save it in a smaller size first");
            }
            return bytes;
        } catch (IOException failed) {
            throw DiskFault.reading(file, failed);
        }
    }
}
