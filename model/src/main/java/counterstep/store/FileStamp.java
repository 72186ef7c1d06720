package counterstep.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Optional;

/**
 * What tells a file from the one that was there before, without reading it: a saved file is a new
 * one put in the place of the old, so that even equal length and time do not hide a change.
 *
 * @param there whether there is a file at all
 * @param modified when it was last written; the epoch if there is none
 * @param bytes its length; 0 if there is none
 * @param identity what the disk knows it by; empty if it does not say
 */
public record FileStamp(boolean there, Instant modified, long bytes, String identity) {
    private static final FileStamp NONE = new FileStamp(false, Instant.EPOCH, 0, "");

    /**
     * The stamp of a file as it is now.
     *
     * @throws counterstep.input.BadInput if the disk does not tell
     */
    public static FileStamp of(Path file) {
        try {
            BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
            return new FileStamp(
                    true,
                    found.lastModifiedTime().toInstant(),
                    found.size(),
                    Optional.ofNullable(found.fileKey()).map(Object::toString).orElse(""));
        } catch (NoSuchFileException gone) {
            return NONE;
        } catch (IOException failed) {
            throw DiskFault.reading(file, failed);
        }
    }
}
