package counterstep.store;

import counterstep.input.BadInput;
import counterstep.model.Procedure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The writer's own blocks: small procedure files in a folder of the program. */
public final class BlockFolder {
    private static final String ENDING = ".procedure.json";
    private static final int MOST = 500;
    private static final Comparator<String> NAMES =
            Comparator.comparing(name -> name.toLowerCase(Locale.ROOT));

    private final Path folder;

    private BlockFolder(Path folder) {
        this.folder = folder;
    }

    /** The blocks in a folder, which need not be there yet. */
    public static BlockFolder at(Path folder) {
        return new BlockFolder(folder);
    }

    /**
     * What lies in the folder.
     *
     * @param blocks those that could be read, by title
     * @param unreadable why others could not be, a sentence each
     */
    public record Content(List<Procedure> blocks, List<String> unreadable) {}

    /** Reads all blocks. A file that cannot be read is told, and left as it is. */
    public Content read() {
        List<Procedure> blocks = new ArrayList<>();
        List<String> unreadable = new ArrayList<>();
        for (Path file : files()) {
            try {
                blocks.add(ProcedureFile.read(file));
            } catch (BadInput bad) {
                unreadable.add(bad.getMessage());
            }
        }
        blocks.sort(Comparator.comparing(block -> block.titleBlock().title(), NAMES));
        return new Content(blocks, unreadable);
    }

    private List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> DiskFault.name(file).endsWith(ENDING))
                    .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .limit(MOST)
                    .toList();
        } catch (IOException failed) {
            throw DiskFault.reading(folder, failed);
        }
    }

    /**
     * Keeps a block under its title, in place of one that had the same.
     *
     * @throws BadInput if the title has no letter or digit, or the disk refuses
     */
    public void keep(Procedure block) {
        Path file = file(block);
        try {
            Files.createDirectories(folder);
        } catch (IOException failed) {
            throw DiskFault.writing(file, failed);
        }
        ProcedureFile.write(file, block);
    }

    /** Whether a block of that title is kept. */
    public boolean has(String title) {
        return Files.exists(folder.resolve(name(title) + ENDING), LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * Throws a block away.
     *
     * @throws BadInput if the disk refuses
     */
    public void drop(Procedure block) {
        Path file = file(block);
        try {
            Files.deleteIfExists(file);
        } catch (IOException failed) {
            throw DiskFault.writing(file, failed);
        }
    }

    private Path file(Procedure block) {
        String title = block.titleBlock().title();
        if (name(title).isEmpty()) {
            throw new BadInput("the block", "'" + title + "' has no letter or digit", "name it");
        }
        return folder.resolve(name(title) + ENDING);
    }

    /** Letters and digits of the title; a file name on every kind of system. */
    private static String name(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}]+", "-")
                        .replaceAll("^-|-$", "");
        return plain.substring(0, Math.min(80, plain.length()));
    }
}
