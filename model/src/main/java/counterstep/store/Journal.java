package counterstep.store;

import counterstep.model.Photo;
import counterstep.model.Procedure;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Unsaved work, kept in a folder of the program for the case that it is not closed properly. Each
 * open window has one and holds a lock on it while it lives; what has no living window was left
 * behind by a crash. The document's own file is never touched.
 */
public final class Journal {
    static final String WORK = ".procedure.json";
    static final String ORIGIN = ".origin";
    static final String LOCK = ".lock";
    static final String PHOTOS = ".photos";

    /** Opening a file again that this very process has locked would give its lock up. */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path base;
    private final FileChannel channel;

    private Journal(Path base, FileChannel channel) {
        this.base = base;
        this.channel = channel;
    }

    /**
     * A journal with nothing in it.
     *
     * @throws counterstep.input.BadInput if the folder cannot be written to
     */
    public static Journal in(Path folder) {
        Path base = folder.toAbsolutePath().resolve(UUID.randomUUID().toString());
        try {
            Files.createDirectories(folder);
        } catch (IOException failed) {
            throw DiskFault.writing(base, failed);
        }
        return held(base)
                .orElseThrow(() -> new IllegalStateException("a new name is held: " + base));
    }

    /** Takes a journal over, unless a living window holds it. */
    static Optional<Journal> held(Path base) {
        Path lock = beside(base, LOCK);
        if (!HELD.add(lock)) {
            return Optional.empty();
        }
        boolean locked = false;
        try {
            FileChannel channel =
                    FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lockOfThisProcess = channel.tryLock();
            locked = lockOfThisProcess != null;
            if (!locked) {
                channel.close();
                return Optional.empty();
            }
            return Optional.of(new Journal(base, channel));
        } catch (IOException failed) {
            throw DiskFault.writing(lock, failed);
        } finally {
            if (!locked) {
                HELD.remove(lock);
            }
        }
    }

    /**
     * Keeps a document, whole, in place of what was kept before.
     *
     * @param procedure the document
     * @param file its file; empty if it has none yet
     * @param photos those of its photos that do not lie beside its file yet
     * @throws counterstep.input.BadInput if the disk refuses; what was kept before stays
     */
    public void keep(Procedure procedure, Optional<Path> file, PhotoFolder photos) {
        Path origin = beside(base, ORIGIN);
        String written = file.map(Path::toAbsolutePath).map(Path::toString).orElse("");
        try {
            WholeFile.put(origin, out -> out.write(written.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException failed) {
            throw DiskFault.writing(origin, failed);
        }
        keepPhotos(procedure, photos);
        ProcedureFile.write(beside(base, WORK), procedure);
    }

    private void keepPhotos(Procedure procedure, PhotoFolder photos) {
        Path kept = beside(base, PHOTOS);
        for (Photo photo : procedure.photos()) {
            if (!Files.exists(kept.resolve(photo.file()))) {
                photos.bytes(photo.file())
                        .ifPresent(bytes -> OutputFolder.at(kept).write(photo.file(), bytes));
            }
        }
    }

    /** Lets go what is kept: it is safe elsewhere, or not wanted. */
    public void clear() {
        try {
            Files.deleteIfExists(beside(base, WORK));
            Files.deleteIfExists(beside(base, ORIGIN));
            clearPhotos(beside(base, PHOTOS));
        } catch (IOException failed) {
            throw DiskFault.writing(beside(base, WORK), failed);
        }
    }

    private static void clearPhotos(Path folder) throws IOException {
        if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            try (Stream<Path> photos = Files.list(folder)) {
                for (Path photo : photos.toList()) {
                    Files.deleteIfExists(photo);
                }
            }
            Files.deleteIfExists(folder);
        }
    }

    /** Lets go what is kept, and the journal itself. */
    public void close() {
        clear();
        Path lock = beside(base, LOCK);
        try {
            channel.close();
            Files.deleteIfExists(lock);
        } catch (IOException failed) {
            throw DiskFault.writing(lock, failed);
        } finally {
            HELD.remove(lock);
        }
    }

    /** Gives up the lock alone, as the end of the process would: what is kept is left behind. */
    public void leave() {
        try {
            channel.close();
        } catch (IOException failed) {
            throw DiskFault.writing(beside(base, LOCK), failed);
        } finally {
            HELD.remove(beside(base, LOCK));
        }
    }

    static Path beside(Path base, String ending) {
        return base.resolveSibling(DiskFault.name(base) + ending);
    }
}
