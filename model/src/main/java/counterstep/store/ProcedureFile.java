package counterstep.store;

import counterstep.input.BadInput;
import counterstep.input.Limits;
import counterstep.json.ProcedureReader;
import counterstep.json.ProcedureWriter;
import counterstep.model.Procedure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A procedure on the disk, {@code NAME.procedure.json}. */
public final class ProcedureFile {
    private static final String ENDING = ".procedure.json";
    private static final String SHORT_ENDING = ".json";

    private ProcedureFile() {}

    /**
     * Reads a procedure.
     *
     * @throws BadInput with the file, the place and the cause, if it cannot be read
     */
    public static Procedure read(Path file) {
        String name = DiskFault.name(file);
        byte[] bytes = bytes(file, name);
        try {
            return ProcedureReader.read(bytes);
        } catch (BadInput bad) {
            throw bad.in(name);
        }
    }

    static byte[] bytes(Path file, String name) {
        if (Files.isDirectory(file)) {
            throw new BadInput(name, "a folder, no file", "name a file in it");
        }
        if (!Files.exists(file)) {
            throw new BadInput(name, "there is no such file in " + DiskFault.folder(file), "");
        }
        if (!Files.isRegularFile(file)) {
            throw new BadInput(name, "no plain file", "copy what it gives into one");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(Limits.FILE_BYTES + 1);
            if (bytes.length > Limits.FILE_BYTES) {
                throw new BadInput(
                        name,
                        "more than " + (Limits.FILE_BYTES >> 20) + " MiB",
                        "a procedure is far shorter");
            }
            return bytes;
        } catch (IOException failed) {
            throw DiskFault.reading(file, failed);
        }
    }

    /**
     * Puts a procedure in the place of the file, or of what it is a symbolic link to. Whatever
     * happens meanwhile, the file is the old or the new one, whole.
     *
     * @throws BadInput with the file and the cause, if it cannot be written; the old file stays
     */
    public static void write(Path file, Procedure procedure) {
        byte[] bytes = ProcedureWriter.write(procedure);
        try {
            WholeFile.put(WholeFile.linked(file), out -> out.write(bytes));
        } catch (IOException failed) {
            throw DiskFault.writing(file, failed);
        }
    }

    /**
     * Writes a procedure to a file that is not there yet.
     *
     * @throws BadInput if there is one of that name, even a symbolic link to nowhere, or if it
     *     cannot be written
     */
    public static void writeNew(Path file, Procedure procedure) {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new BadInput(DiskFault.name(file), "is there already", "name another file");
        }
        write(file, procedure);
    }

    /** The file name without its ending: the NAME of photo folder and exports. */
    public static String baseName(Path file) {
        String name = DiskFault.name(file);
        for (String ending : new String[] {ENDING, SHORT_ENDING}) {
            if (name.endsWith(ending) && name.length() > ending.length()) {
                return name.substring(0, name.length() - ending.length());
            }
        }
        return name;
    }
}
