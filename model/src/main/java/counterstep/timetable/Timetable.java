package counterstep.timetable;

import java.util.List;

/**
 * When each activity of a project starts.
 *
 * @param starts by number of the activity
 * @param workers who of the people does it, by number of the activity; empty lists where tools do
 *     not matter
 * @param length when the last of them is over
 */
public record Timetable(List<Integer> starts, List<List<Integer>> workers, int length) {
    /** Copies the lists. */
    public Timetable {
        starts = List.copyOf(starts);
        workers = workers.stream().map(List::copyOf).toList();
    }

    /**
     * What comes of an order if each activity starts as soon as it can, none before the one in
     * front of it.
     *
     * @param order all activities, each after those it comes after
     */
    public static Timetable inOrder(Project project, List<Integer> order) {
        Side side = new Side(project, false, () -> false);
        State state = State.empty(side.board());
        for (int activity : order) {
            state = Expansion.soonest(side.board(), state, activity);
        }
        return side.timetable(state);
    }
}
