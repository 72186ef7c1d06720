package counterstep.export.guide;

import counterstep.model.Drive;
import counterstep.model.Tool;
import java.util.Optional;

/**
 * A tool where it is picked up.
 *
 * @param label 'T5', 'plastic pick'
 * @param drive what it turns, for its mark
 */
public record ToolTag(String label, Optional<Drive> drive) {
    static ToolTag of(Tool tool) {
        return new ToolTag(tool.label(), tool.drive());
    }
}
