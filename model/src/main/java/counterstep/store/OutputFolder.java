package counterstep.store;

import counterstep.input.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** The folder that exports are written to, each file replaced whole. */
public final class OutputFolder {
    /** What no system takes as part of a plain name: separators, controls, drive letters. */
    private static final Pattern NOT_PLAIN = Pattern.compile("[/\\\\:\\p{Cntrl}]");

    private final Path directory;

    private OutputFolder(Path directory) {
        this.directory = directory;
    }

    /** Files go there; the folder is made with the first of them. */
    public static OutputFolder at(Path directory) {
        return new OutputFolder(directory);
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
            return new OutputFolder(directory);
        } catch (IOException failed) {
            throw DiskFault.writing(Path.of(System.getProperty("java.io.tmpdir", "")), failed);
        }
    }

    /** Where the files go. */
    public Path directory() {
        return directory;
    }

    /**
     * Puts a file in place whole; a symbolic link of that name is replaced, not followed.
     *
     * @return the path of the file
     * @throws BadInput if the name is no plain file name, or the disk refuses
     */
    public Path write(String fileName, byte[] content) {
        if (fileName.isEmpty()
                || fileName.equals(".")
                || fileName.equals("..")
                || NOT_PLAIN.matcher(fileName).find()) {
            throw new BadInput(
                    directory.toString(), "'" + fileName + "' is no plain file name", "");
        }
        Path file = directory.resolve(fileName);
        makeDirectory();
        try {
            WholeFile.put(file, out -> out.write(content));
        } catch (IOException failed) {
            throw DiskFault.writing(file, failed);
        }
        return file;
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
