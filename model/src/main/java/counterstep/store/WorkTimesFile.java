package counterstep.store;

import counterstep.handbook.WorkTimes;
import counterstep.input.BadInput;
import java.nio.charset.StandardCharsets;
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
}
