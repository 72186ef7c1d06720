package counterstep.export.guide;

import counterstep.model.Phase;
import java.util.List;

/**
 * Steps of one phase that follow each other.
 *
 * @param phase their phase
 * @param title 'Teardown', or 'Teardown, continued' where the phase was interrupted
 * @param steps one or more
 */
public record PhaseBlock(Phase phase, String title, List<StepBlock> steps) {
    /** Copies the list. */
    public PhaseBlock {
        steps = List.copyOf(steps);
    }

    /** 'steps 2 to 14'. */
    public String range() {
        return StepNumbers.withWord(steps.stream().map(StepBlock::number).toList());
    }
}
