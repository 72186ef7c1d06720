package counterstep.editor.canvas;

import counterstep.model.StepId;
import java.awt.Image;
import java.nio.file.Path;
import java.util.List;

/** Who takes photos that are dropped onto a step. */
public interface PhotoDrop {
    /** Files, each with the name of a picture. */
    void files(StepId step, List<Path> photos);

    /** A picture that another program carries without a file. */
    void image(StepId step, Image photo);
}
