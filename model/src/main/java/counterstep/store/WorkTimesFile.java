package counterstep.store;

import counterstep.handbook.WorkTimes;
import counterstep.input.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A writer's own figures for estimates, on the disk: the lines that {@link WorkTimes} takes. */
public final class WorkTimesFile {
    private WorkTimesFile() {}

    /**
     * The published figures with those of a file in their place.
     *
     * @throws BadInput with the file and the line, if it cannot be read
     */
    public static WorkTimes read(Path file) {
        String name = DiskFault.name(file);
        String text = new String(ProcedureFile.bytes(file, name), StandardCharsets.UTF_8);
        try {
            return WorkTimes.published().with(text.lines().toList());
        } catch (BadInput bad) {
            throw bad.in(name);
        }
    }

    /**
     * What stands in a file, right or wrong; nothing where there is none.
     *
     * @throws BadInput with the file, if it cannot be read
     */
    public static String text(Path file) {
        return Files.exists(file)
                ? new String(
                        ProcedureFile.bytes(file, DiskFault.name(file)), StandardCharsets.UTF_8)
                : "";
    }

    /**
     * Puts own figures in the place of the file, whole, once they have been read.
     *
     * @return the published figures with these in their place
     * @throws BadInput with the line, if one is no figure, or with the file, if the disk refuses;
     *     the old file stays
     */
    public static WorkTimes write(Path file, String text) {
        WorkTimes figures = WorkTimes.published().with(text.lines().toList());
        try {
            Files.createDirectories(DiskFault.folder(file));
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            WholeFile.put(WholeFile.linked(file), out -> out.write(bytes));
        } catch (IOException failed) {
            throw DiskFault.writing(file, failed);
        }
        return figures;
    }
}
