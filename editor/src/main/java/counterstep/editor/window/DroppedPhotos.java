package counterstep.editor.window;

import counterstep.editor.canvas.PhotoDrop;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.model.StepId;
import java.awt.Image;
import java.nio.file.Path;
import java.util.List;

/** Photos dropped onto a step of the graph are taken in for it. */
record DroppedPhotos(PhotoIntake intake) implements PhotoDrop {
    @Override
    public void files(StepId step, List<Path> photos) {
        intake.addFiles(photos, step);
    }

    @Override
    public void image(StepId step, Image photo) {
        intake.addImage(photo, step);
    }
}
