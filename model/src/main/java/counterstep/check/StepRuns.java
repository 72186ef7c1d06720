package counterstep.check;

import counterstep.model.Index;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;

/** Steps in the order in which they are done, those that follow each other on the page together. */
public final class StepRuns {
    private StepRuns() {}

    /** A phrase a run, by page number: '1 to 4', '9', '5, 6'. */
    public static List<String> of(List<StepId> steps, Index index) {
        List<String> runs = new ArrayList<>();
        int begin = 0;
        for (int place = 1; place <= steps.size(); place++) {
            boolean broken =
                    place == steps.size()
                            || index.number(steps.get(place))
                                    != index.number(steps.get(place - 1)) + 1;
            if (broken) {
                runs.add(run(index.number(steps.get(begin)), place - begin));
                begin = place;
            }
        }
        return runs;
    }

    private static String run(int first, int length) {
        int last = first + length - 1;
        return switch (length) {
            case 1 -> Integer.toString(first);
            case 2 -> first + ", " + last;
            default -> first + " to " + last;
        };
    }
}
