package counterstep.timetable;

import java.util.ArrayList;
import java.util.List;

/**
 * The shortest length by trying every order and everybody for everything: each activity at the
 * first moment at which a plain look at each moment finds nothing against it. Shares nothing with
 * the search.
 */
final class AllTimetables {
    private final Project project;
    private final int size;
    private final int change;
    private final int people;
    private final int[] starts;
    private final List<List<Integer>> queues = new ArrayList<>();
    private int shortest = Integer.MAX_VALUE;

    private AllTimetables(Project project) {
        this.project = project;
        size = project.activities().size();
        starts = new int[size];
        boolean tools = project.hands().isPresent();
        change = tools ? project.hands().orElseThrow().change() : 0;
        people = tools ? project.capacities().get(project.hands().orElseThrow().resource()) : 0;
        for (int person = 0; person < people; person++) {
            queues.add(new ArrayList<>());
        }
    }

    static int shortest(Project project) {
        AllTimetables all = new AllTimetables(project);
        all.go(new ArrayList<>(), 0);
        return all.shortest;
    }

    private void go(List<Integer> placed, int length) {
        if (length >= shortest) {
            return;
        }
        if (placed.size() == size) {
            shortest = length;
            return;
        }
        for (int next = 0; next < size; next++) {
            int wanted = next;
            boolean ready =
                    project.links().stream()
                            .filter(link -> link.later() == wanted)
                            .allMatch(link -> placed.contains(link.earlier()));
            if (ready && !placed.contains(next)) {
                place(next, placed, length);
            }
        }
    }

    private void place(int next, List<Integer> placed, int length) {
        int hands = hands(next);
        if (hands == 0) {
            start(next, List.of(), placed, length);
        }
        for (int worker = 0; worker < people && hands > 0; worker++) {
            if (hands == 1) {
                start(next, List.of(worker), placed, length);
            }
            for (int second = 0; second < people && hands == 2; second++) {
                if (second != worker) {
                    start(next, List.of(worker, second), placed, length);
                }
            }
        }
    }

    private int hands(int next) {
        if (people == 0) {
            return 0;
        }
        int resource = project.hands().orElseThrow().resource();
        int needed =
                activity(next).needs().stream()
                        .filter(need -> need.resource() == resource && need.time() > 0)
                        .mapToInt(Need::amount)
                        .sum();
        return activity(next).tools().isPresent() ? Math.max(1, needed) : needed;
    }

    private void start(int next, List<Integer> workers, List<Integer> placed, int length) {
        int start = 0;
        for (Project.Before link : project.links()) {
            if (link.later() == next) {
                start = Math.max(start, end(link.earlier()));
            }
        }
        for (int worker : workers) {
            boolean first = worker == workers.get(0);
            start = Math.max(start, freeAt(worker, first ? next : -1));
        }
        while (!fits(next, start, placed)) {
            start++;
        }
        starts[next] = start;
        List<Integer> more = new ArrayList<>(placed);
        more.add(next);
        workers.forEach(
                worker -> queues.get(worker).add(workers.get(0).equals(worker) ? next : ~next));
        go(more, Math.max(length, end(next)));
        workers.forEach(worker -> queues.get(worker).remove(queues.get(worker).size() - 1));
    }

    /** When a person has done all they took on so far, with the tool of the next in hand. */
    private int freeAt(int person, int next) {
        int free = 0;
        int held = -1;
        for (int entry : queues.get(person)) {
            int activity = entry < 0 ? ~entry : entry;
            free = starts[activity] + handsTime(activity);
            if (entry >= 0 && activity(activity).tools().isPresent()) {
                held = activity(activity).tools().get().last();
            }
        }
        boolean other =
                next >= 0
                        && activity(next).tools().isPresent()
                        && activity(next).tools().get().first() != held;
        return free + (other ? change : 0);
    }

    private int handsTime(int activity) {
        return activity(activity).needs().stream()
                .filter(need -> need.resource() == project.hands().orElseThrow().resource())
                .mapToInt(Need::time)
                .sum();
    }

    private boolean fits(int next, int start, List<Integer> placed) {
        for (Need need : activity(next).needs()) {
            for (int moment = start; moment < start + need.time(); moment++) {
                int used = need.amount();
                for (int other : placed) {
                    for (Need theirs : activity(other).needs()) {
                        boolean then =
                                starts[other] <= moment && moment < starts[other] + theirs.time();
                        used += then && theirs.resource() == need.resource() ? theirs.amount() : 0;
                    }
                }
                if (used > project.capacities().get(need.resource())) {
                    return false;
                }
            }
        }
        return true;
    }

    private Activity activity(int number) {
        return project.activities().get(number);
    }

    private int end(int number) {
        return starts[number] + activity(number).duration();
    }
}
