package counterstep.editor.canvas;

import counterstep.model.Phase;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/**
 * What is read on a step.
 *
 * @param number its place in page order, from 1
 * @param title its title
 * @param phase tells the left edge
 * @param marks fasteners, connectors and so on, with counts
 * @param minutes m:ss, or empty where no time is stated
 * @param tool what is picked up for it; empty where the tool in hand goes on
 * @param trouble worst severity of what is found at it
 * @param near what only is read from near
 */
record StepFace(
        int number,
        String title,
        Phase phase,
        List<StepMark> marks,
        String minutes,
        String tool,
        Optional<Severity> trouble,
        Contents near)
        implements Face {
    @Override
    public String said() {
        String worst = trouble.map(severity -> ", " + severity.word()).orElse("");
        return "step %d, %s, %s%s".formatted(number, title, phase.word(), worst);
    }

    @Override
    public List<StepId> behind(StepId step) {
        return List.of(step);
    }
}
