package counterstep.store;

import counterstep.input.BadInput;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Unsaved work that was left behind by a window that was not closed properly; read whole, and held
 * from then on by whoever found it.
 *
 * @param procedure the work
 * @param file the file it was opened from or saved to; empty if it had none
 * @param photos those of its photos that did not lie beside its file yet, read like the rest
 * @param when it was kept
 * @param journal holds it
 */
public record Kept(
        Procedure procedure,
        Optional<Path> file,
        PhotoFolder photos,
        Instant when,
        Journal journal) {
    /** All that was left behind in a folder, the latest first. What cannot be read stays there. */
    public static List<Kept> in(Path folder) {
        List<Kept> left = new ArrayList<>();
        for (Path work : works(folder)) {
            String name = DiskFault.name(work);
            String id = name.substring(0, name.length() - Journal.WORK.length());
            Path base = work.resolveSibling(id);
            Journal.held(base).ifPresent(journal -> read(base, work, journal).ifPresent(left::add));
        }
        left.sort(Comparator.comparing(Kept::when).reversed());
        return List.copyOf(left);
    }

    private static List<Path> works(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.toAbsolutePath())) {
            return files.filter(
                            file ->
                                    !DiskFault.name(file).startsWith(".")
                                            && DiskFault.name(file).endsWith(Journal.WORK))
                    .toList();
        } catch (IOException failed) {
            throw DiskFault.reading(folder, failed);
        }
    }

    private static Optional<Kept> read(Path base, Path work, Journal journal) {
        try {
            Procedure procedure = ProcedureFile.read(work);
            return Optional.of(
                    new Kept(
                            procedure,
                            origin(base),
                            photos(procedure, PhotoFolder.beside(work)),
                            Files.getLastModifiedTime(work).toInstant(),
                            journal));
        } catch (IOException | BadInput unreadable) {
            journal.leave();
            return Optional.empty();
        }
    }

    private static PhotoFolder photos(Procedure procedure, PhotoFolder kept) {
        PhotoPile read = new PhotoPile();
        for (Photo photo : procedure.photos()) {
            kept.bytes(photo.file()).ifPresent(bytes -> read.add(photo.file(), bytes));
        }
        return PhotoFolder.of(read::bytes);
    }

    private static Optional<Path> origin(Path base) throws IOException {
        try {
            String written = Files.readString(Journal.beside(base, Journal.ORIGIN));
            return written.isEmpty() ? Optional.empty() : Optional.of(Path.of(written));
        } catch (InvalidPathException writtenElsewhere) {
            return Optional.empty();
        }
    }
}
