package counterstep.timetable;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** A project spread out for the search: plain arrays, by number of the activity. */
final class Board {
    /** No tool in hand. */
    static final int NONE = -1;

    final int size;
    final int[] duration;
    final int[] needed;
    final Need[][] needs;
    final int[][] before;
    final int[][] next;
    final BitSet[] after;
    final List<Integer> sequence;
    final int[] capacity;

    /** The resource whose units are people with tools; {@link #NONE} if tools do not matter. */
    final int hands;

    final int people;
    final int change;
    final int fewestChanges;
    final int[] first;
    final int[] last;
    final int[] within;
    final int[] workers;
    final int[] handsFor;
    final int[] tail;
    final List<Limit> limits;
    final ToolChains chains;

    Board(Project project) {
        List<Activity> activities = project.activities();
        size = activities.size();
        duration = activities.stream().mapToInt(Activity::duration).toArray();
        needed = activities.stream().mapToInt(Activity::needed).toArray();
        needs = activities.stream().map(Board::real).toArray(Need[][]::new);
        capacity = project.capacities().stream().mapToInt(Integer::intValue).toArray();
        sequence = Sequence.of(size, project.links());
        before = ends(project, false);
        next = ends(project, true);
        after = project.after();
        boolean tools = project.withTools();
        hands = tools ? project.hands().orElseThrow().resource() : NONE;
        change = tools ? project.hands().orElseThrow().change() : 0;
        fewestChanges = tools ? project.hands().orElseThrow().fewestChanges() : 0;
        people = tools ? Math.min(capacity[hands], 2 * size) : 0;
        first = tools(activities, tools, Activity.Tools::first, NONE);
        last = tools(activities, tools, Activity.Tools::last, NONE);
        within = tools(activities, tools, Activity.Tools::within, 0);
        workers = new int[size];
        handsFor = new int[size];
        for (int activity = 0; tools && activity < size; activity++) {
            readHands(activity, project.activities().get(activity));
        }
        chains = new ToolChains(this);
        limits = Limit.of(this, Cliques.of(project));
        tail = new int[size];
        new Tails(this).fill();
        limits.forEach(limit -> limit.sort(this));
    }

    private static Need[] real(Activity activity) {
        return activity.needs().stream().filter(need -> need.work() > 0).toArray(Need[]::new);
    }

    /** Who takes up a tool is needed even where no time is stated. */
    private void readHands(int activity, Activity asked) {
        for (Need need : asked.needs()) {
            if (need.resource() == hands && need.work() > 0) {
                workers[activity] = need.amount();
                handsFor[activity] = Math.max(handsFor[activity], need.time());
            }
        }
        if (first[activity] != NONE) {
            workers[activity] = Math.max(1, workers[activity]);
        }
    }

    private static int[] tools(
            List<Activity> activities,
            boolean matter,
            ToIntFunction<Activity.Tools> fact,
            int otherwise) {
        int[] facts = new int[activities.size()];
        for (int activity = 0; activity < facts.length; activity++) {
            Optional<Activity.Tools> tools = activities.get(activity).tools();
            facts[activity] =
                    matter && tools.isPresent() ? fact.applyAsInt(tools.get()) : otherwise;
        }
        return facts;
    }

    private static int[][] ends(Project project, boolean forward) {
        List<List<Integer>> ends = new ArrayList<>();
        project.activities().forEach(activity -> ends.add(new ArrayList<>()));
        for (Project.Before link : project.links()) {
            int from = forward ? link.earlier() : link.later();
            int to = forward ? link.later() : link.earlier();
            if (!ends.get(from).contains(to)) {
                ends.get(from).add(to);
            }
        }
        return ends.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /** Whether a resource is people, whose work the search follows one by one. */
    boolean isHands(int resource) {
        return resource == hands;
    }

    /** No timetable is shorter, as far as can be told without a search. */
    int leastLength() {
        int least = 0;
        for (int activity = 0; activity < size; activity++) {
            least = Math.max(least, duration[activity] + tail[activity]);
        }
        State empty = State.empty(this);
        for (Limit limit : limits) {
            least = Math.max(least, limit.bound(empty, least));
        }
        return least;
    }
}
