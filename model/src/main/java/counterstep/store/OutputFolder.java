package counterstep.store;

import counterstep.input.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The folder that exports are written to, each file replaced whole. */
public final class OutputFolder {
    /** What no system takes as part of a plain name: separators, controls, drive letters. */
    private static final Pattern NOT_PLAIN = Pattern.compile("[/\\\\:\\p{Cntrl}]");

    private final Path directory;
    private final Optional<Map<Path, byte[]>> memory;

    private OutputFolder(Path directory, Optional<Map<Path, byte[]>> memory) {
        this.directory = directory;
        this.memory = memory;
    }

    /** Files go there; the folder is made with the first of them. */
    public static OutputFolder at(Path directory) {
        return new OutputFolder(directory, Optional.empty());
    }

    /** A folder that is none: its files stay in memory, to be shown and not kept. */
    public static OutputFolder inMemory() {
        return new OutputFolder(Path.of(""), Optional.of(new LinkedHashMap<>()));
    }

    /**
     * A new folder for pages that are shown and not kept: only the user who runs the program can
     * look into it, and it goes when the program ends, if what lies in it went before.
     *
     * @throws BadInput if the disk refuses
     */
    public static OutputFolder temporary() {
        try {
            Path directory = Files.createTempDirectory("counterstep-");
            directory.toFile().deleteOnExit();
            return at(directory);
        } catch (IOException failed) {
            throw DiskFault.writing(Path.of(System.getProperty("java.io.tmpdir", "")), failed);
        }
    }

    /** A folder in this one; made with the first file in it. */
    public OutputFolder inner(String name) {
        return new OutputFolder(directory.resolve(plain(name)), memory);
    }

    /** What was written so far, if it stays in memory; else nothing. */
    public Map<Path, byte[]> contents() {
        return memory.map(Map::copyOf).orElseGet(Map::of);
    }

    /**
     * Puts a file in place whole; a symbolic link of that name is replaced, not followed.
     *
     * @return the path of the file
     * @throws BadInput if the name is no plain file name, or the disk refuses
     */
    public Path write(String fileName, byte[] content) {
        Path file = directory.resolve(plain(fileName));
        if (memory.isPresent()) {
            memory.get().put(file, content.clone());
            return file;
        }
        makeDirectory();
        try {
            WholeFile.put(file, out -> out.write(content));
        } catch (IOException failed) {
            throw DiskFault.writing(file, failed);
        }
        return file;
    }

    private String plain(String name) {
        if (name.isEmpty()
                || name.equals(".")
                || name.equals("..")
                || NOT_PLAIN.matcher(name).find()) {
            throw new BadInput(directory.toString(), "'" + name + "' is no plain file name", "");
        }
        return name;
    }

    private void makeDirectory() {
        if (Files.exists(directory) && !Files.isDirectory(directory)) {
            throw new BadInput(directory.toString(), "a file, no folder", "name another");
        }
        try {
            Files.createDirectories(directory);
        } catch (IOException failed) {
            throw DiskFault.writing(directory, failed);
        }
    }
}
