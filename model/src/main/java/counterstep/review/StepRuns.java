package counterstep.review;

import counterstep.check.Phrases;
import counterstep.model.Index;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/** Names many steps shortly, in the order in which they are done: 'steps 1 to 6, then 9'. */
final class StepRuns {
    private static final int MOST_RUNS = 3;

    private StepRuns() {}

    static String of(List<StepId> steps, Index index) {
        if (steps.size() == 1) {
            return "step " + index.number(steps.get(0)) + title(index, steps.get(0));
        }
        List<String> runs = new ArrayList<>();
        int start = 0;
        for (int place = 1; place <= steps.size(); place++) {
            boolean goesOn =
                    place < steps.size()
                            && index.page(steps.get(place)) == index.page(steps.get(place - 1)) + 1;
            if (!goesOn) {
                runs.add(run(index.number(steps.get(start)), index.number(steps.get(place - 1))));
                start = place;
            }
        }
        return runs.size() > MOST_RUNS
                ? steps.size() + " other steps"
                : "steps " + Phrases.list(runs);
    }

    private static String run(int from, int to) {
        return from == to ? "" + from : to == from + 1 ? from + ", " + to : from + " to " + to;
    }

    /** The title of a step after its number; nothing where it has none. */
    static String title(Index index, StepId step) {
        String title = index.step(step).title().strip();
        return title.isEmpty() ? "" : ", " + title;
    }
}
