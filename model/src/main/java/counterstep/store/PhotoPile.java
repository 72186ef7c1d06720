package counterstep.store;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Photos that have no folder yet, one behind the other in a temporary file, so that hundreds of
 * them take no memory. The file goes with the program. May be used from any thread, and by one that
 * is interrupted: a channel would be closed for all others then.
 */
public final class PhotoPile {
    /** Where the bytes of one photo lie. */
    private record Part(long from, int length) {}

    private final Map<String, Part> parts = new HashMap<>();
    private Optional<RandomAccessFile> file = Optional.empty();

    /** With nothing on it; the temporary file is made for the first. */
    public PhotoPile() {}

    /**
     * Lays a photo on it; one of that name that lies there stays, since its name tells its content.
     *
     * @throws counterstep.input.BadInput if the disk refuses
     */
    public synchronized void add(String name, byte[] bytes) {
        if (parts.containsKey(name)) {
            return;
        }
        try {
            RandomAccessFile to = opened();
            long end = to.length();
            to.seek(end);
            to.write(bytes);
            parts.put(name, new Part(end, bytes.length));
        } catch (IOException failed) {
            throw DiskFault.writing(Path.of("temporary file"), failed);
        }
    }

    private RandomAccessFile opened() throws IOException {
        if (file.isEmpty()) {
            Path path = Files.createTempFile("counterstep", ".photos");
            file = Optional.of(new RandomAccessFile(path.toFile(), "rw"));
            try {
                Files.delete(path); // it lives on without a name for as long as it is open
            } catch (IOException notWhileOpen) {
                path.toFile().deleteOnExit();
            }
        }
        return file.get();
    }

    /** The bytes of a photo, as they came; empty if it does not lie here. */
    public synchronized Optional<byte[]> bytes(String name) {
        return Optional.ofNullable(parts.get(name)).flatMap(this::read);
    }

    private Optional<byte[]> read(Part part) {
        byte[] bytes = new byte[part.length()];
        try {
            RandomAccessFile from = opened();
            from.seek(part.from());
            from.readFully(bytes);
            return Optional.of(bytes);
        } catch (IOException gone) {
            return Optional.empty(); // as a photo whose file is missing
        }
    }
}
