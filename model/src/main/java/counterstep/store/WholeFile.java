package counterstep.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * Puts a file in place whole: written beside it, forced to the disk, then moved over the old one in
 * one act. A program killed meanwhile leaves the old or the new file, at worst with a hidden {@code
 * .tmp} file beside it.
 */
final class WholeFile {
    private static final int LINKS_FOLLOWED = 40;

    private WholeFile() {}

    /** Whatever writes the content. */
    @FunctionalInterface
    interface Content {
        /** Writes all of it. */
        void writeTo(OutputStream out) throws IOException;
    }

    /** Replaces the target, or makes it; on failure the target is as it was. */
    static void put(Path target, Content content) throws IOException {
        requireReplaceable(target);
        Path beside =
                target.resolveSibling(
                        "." + DiskFault.name(target) + "." + UUID.randomUUID() + ".tmp");
        try {
            write(beside, content);
            keepPermissions(target, beside);
            Files.move(
                    beside,
                    target,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
        forceFolder(DiskFault.folder(target));
    }

    private static void requireReplaceable(Path target) throws IOException {
        if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileSystemException(target.toString(), "", "a folder stands in its place");
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
    }

    private static void write(Path file, Content content) throws IOException {
        try (FileChannel channel =
                        FileChannel.open(
                                file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            content.writeTo(out);
            channel.force(true);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old =
                Files.getFileAttributeView(
                        from, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (old != null && Files.isRegularFile(from, LinkOption.NOFOLLOW_LINKS)) {
            Files.setPosixFilePermissions(to, old.readAttributes().permissions());
        }
    }

    /** Makes the move itself last; a system that cannot open folders has no such need or means. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOffered) {
            return; // The content is safe already, and the move is one act in any case.
        }
    }

    /** Where a symbolic link leads in the end, whether or not there is a file yet. */
    static Path linked(Path file) throws IOException {
        Path target = file;
        for (int followed = 0; Files.isSymbolicLink(target); followed++) {
            if (followed == LINKS_FOLLOWED) {
                throw new FileSystemException(
                        file.toString(), "", "its symbolic links lead in a circle");
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }
}
