package counterstep.review;

import counterstep.check.Phrases;
import counterstep.check.StepRuns;
import counterstep.model.Index;
import counterstep.model.StepId;
import java.util.List;

/** Names steps shortly: one by its title, many by their runs, very many by their count. */
final class StepNames {
    private static final int MOST_RUNS = 3;

    private StepNames() {}

    /** Steps in the order in which they are done: 'steps 1 to 6 and 9'. */
    static String of(List<StepId> steps, Index index) {
        if (steps.size() == 1) {
            return "step " + index.number(steps.get(0)) + title(index, steps.get(0));
        }
        List<String> runs = StepRuns.of(steps, index);
        return runs.size() > MOST_RUNS
                ? steps.size() + " other steps"
                : "steps " + Phrases.list(runs);
    }

    /** The title of a step after its number; nothing where it has none. */
    static String title(Index index, StepId step) {
        String title = index.step(step).title().strip();
        return title.isEmpty() ? "" : ", " + title;
    }
}
