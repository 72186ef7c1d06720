package counterstep.editor.desk;

import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/**
 * How far an order of steps has been walked through, to see where it goes wrong.
 *
 * @param done the steps done so far, in their order
 * @param fails the step that goes wrong, once it is reached
 */
public record Replayed(List<StepId> done, Optional<StepId> fails) {
    /** Nothing is being walked through. */
    public static final Replayed NOTHING = new Replayed(List.of(), Optional.empty());

    /** Copies the list. */
    public Replayed {
        done = List.copyOf(done);
    }

    /** Where the walk stands now. */
    public Optional<StepId> now() {
        return fails.or(
                () -> done.isEmpty() ? Optional.empty() : Optional.of(done.get(done.size() - 1)));
    }
}
