package counterstep.export.guide;

import counterstep.model.Drive;
import java.util.List;
import java.util.Optional;

/**
 * A tool on the list of what is needed.
 *
 * @param name what it is called, with its setting
 * @param drive what it turns, for its mark
 * @param steps numbers of the steps that use it, rising
 */
public record ToolRow(String name, Optional<Drive> drive, List<Integer> steps) {
    /** Copies the list. */
    public ToolRow {
        steps = List.copyOf(steps);
    }
}
