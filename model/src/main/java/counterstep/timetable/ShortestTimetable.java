package counterstep.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * The shortest timetable of a project. To find it is hard in general (Blazewicz, Lenstra and
 * Rinnooy Kan 1983, from memory); the search can be stopped at any moment and then has the best so
 * far and a bound. It looks for a shorter one with a narrow search, and for deadlines that none can
 * meet, both wider each time.
 */
public final class ShortestTimetable {
    private static final int NARROWEST = 8;
    private static final int WIDER = 8;
    private static final int WIDEST = 1 << 18;
    private static final int PROBE = 512;

    private final BooleanSupplier stopped;
    private final List<Side> sides = new ArrayList<>();
    private Timetable best;
    private int atLeast;

    private ShortestTimetable(
            Project project, List<List<Integer>> orders, BooleanSupplier stopped) {
        this.stopped = stopped;
        sides.add(new Side(project, false, stopped));
        atLeast = sides.get(0).board().leastLength();
        if (!project.canBeTurned()) {
            best = inOrder();
        } else {
            sides.add(new Side(project, true, stopped));
            atLeast = Math.max(atLeast, sides.get(1).board().leastLength());
            best = byPriority();
            narrowerSideFirst();
        }
        for (List<Integer> order : orders) {
            Timetable other = Timetable.inOrder(project, order);
            best = other.length() < best.length() ? other : best;
        }
        for (int width = NARROWEST; width <= WIDEST && isOpen(); width *= WIDER) {
            int wide = width;
            sides.stream()
                    .filter(side -> side == sides.get(0) || wide <= PROBE)
                    .forEach(side -> shorten(side, wide));
            raise(sides.get(0), width);
        }
    }

    /** Searches until the best is proved, nothing more can be done, or it is stopped. */
    public static ShortestTimetable of(Project project, BooleanSupplier stopped) {
        return of(project, List.of(), stopped);
    }

    /**
     * The same, with orders that are thought to be good.
     *
     * @param orders of all activities, each after those it comes after
     */
    public static ShortestTimetable of(
            Project project, List<List<Integer>> orders, BooleanSupplier stopped) {
        return new ShortestTimetable(project, orders, stopped);
    }

    /** What a search finds that always takes the most promising next step. */
    private Timetable inOrder() {
        Side side = sides.get(0);
        Search search = new Search(side.board(), () -> false);
        return side.timetable(search.within(Integer.MAX_VALUE / 2, 1).end().orElseThrow());
    }

    private Timetable byPriority() {
        return sides.get(0)
                .timetable(
                        FirstTimetables.best(
                                sides.get(0).board(), sides.get(1).board(), atLeast, stopped));
    }

    /** From one end a project is often much narrower than from the other. */
    private void narrowerSideFirst() {
        boolean both = true;
        while (both && isOpen()) {
            int deadline = atLeast;
            Map<Side, Search.Outcome> outcomes = new HashMap<>();
            for (Side side : sides) {
                outcomes.put(side, side.search().within(deadline, PROBE));
            }
            outcomes.forEach((side, outcome) -> take(side, outcome, deadline));
            both = outcomes.values().stream().allMatch(outcome -> outcome.atLeast() > deadline);
            sides.sort(
                    Comparator.comparing((Side side) -> outcomes.get(side).atLeast() <= deadline)
                            .thenComparing(side -> outcomes.get(side).states()));
        }
    }

    private boolean isOpen() {
        return atLeast < best.length() && !stopped.getAsBoolean();
    }

    private void shorten(Side side, int width) {
        boolean better = true;
        while (better && isOpen()) {
            int deadline = best.length() - 1;
            take(side, side.search().within(deadline, width), deadline);
            better = best.length() <= deadline;
        }
    }

    /** Takes deadlines that nothing can meet, further up each time. */
    private void raise(Side side, int width) {
        boolean sure = true;
        for (int step = 0; sure && isOpen(); step = 2 * step + 1) {
            int deadline = Math.min(best.length() - 1, atLeast + step);
            int before = atLeast;
            take(side, side.search().within(deadline, width), deadline);
            sure = atLeast > before;
        }
    }

    private void take(Side side, Search.Outcome outcome, int deadline) {
        if (outcome.end().isPresent()) {
            best = side.timetable(outcome.end().get());
        } else if (outcome.atLeast() > deadline) {
            atLeast = Math.max(atLeast, Math.min(outcome.atLeast(), best.length()));
        }
    }

    /** The shortest one found. */
    public Timetable best() {
        return best;
    }

    /** No timetable is shorter than this. */
    public int atLeast() {
        return atLeast;
    }

    /** Whether no timetable is shorter than the one found. */
    public boolean proved() {
        return atLeast == best.length();
    }
}
