package counterstep.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * A capacity and the work that has to fit into it: a resource, or activities no two of which can
 * run at once. From now until any moment before the end no more work fits in than capacity times
 * time: what is to come is taken as late as possible (energetic reasoning on intervals that begin
 * now; Erschler and Lopez 1990, from memory).
 */
final class Limit {
    /**
     * The work of one activity.
     *
     * @param activity by number
     * @param amount units
     * @param length how long, from the start of the activity
     * @param rest how long the activity goes on afterwards
     */
    record Work(int activity, int amount, int length, int rest) {}

    private record Event(int before, int activity, int slope) {}

    private final Board board;
    private final int resource;
    private final int capacity;
    private final Work[] works;
    private final int[] amount;
    private final int[] length;
    private int[] eventBefore = {};
    private int[] eventActivity = {};
    private int[] eventSlope = {};

    private Limit(Board board, int resource, int capacity, List<Work> works) {
        this.board = board;
        this.resource = resource;
        this.capacity = capacity;
        this.works = works.toArray(Work[]::new);
        amount = new int[board.size];
        length = new int[board.size];
        for (Work work : works) {
            amount[work.activity()] = work.amount();
            length[work.activity()] = work.length();
        }
    }

    /** One of each resource, and one of each set of activities that exclude each other. */
    static List<Limit> of(Board board, List<BitSet> cliques) {
        List<Limit> limits = new ArrayList<>();
        for (int resource = 0; resource < board.capacity.length; resource++) {
            List<Work> works = new ArrayList<>();
            for (int activity = 0; activity < board.size; activity++) {
                for (Need need : board.needs[activity]) {
                    if (need.resource() == resource) {
                        works.add(work(board, activity, need));
                    }
                }
            }
            if (!works.isEmpty()) {
                limits.add(new Limit(board, resource, board.capacity[resource], works));
            }
        }
        for (BitSet clique : cliques) {
            List<Work> works =
                    clique.stream()
                            .mapToObj(one -> new Work(one, 1, board.duration[one], 0))
                            .toList();
            limits.add(new Limit(board, Board.NONE - 1, 1, works));
        }
        return limits;
    }

    private static Work work(Board board, int activity, Need need) {
        return new Work(
                activity, need.amount(), need.time(), board.duration[activity] - need.time());
    }

    /** To be called when the tails are known. */
    void sort(Board board) {
        List<Event> events = new ArrayList<>();
        for (Work work : works) {
            int before = board.tail[work.activity()] + work.rest();
            events.add(new Event(before, work.activity(), work.amount()));
            events.add(new Event(before + work.length(), work.activity(), -work.amount()));
        }
        events.sort(Comparator.comparingInt(Event::before));
        eventBefore = events.stream().mapToInt(Event::before).toArray();
        eventActivity = events.stream().mapToInt(Event::activity).toArray();
        eventSlope = events.stream().mapToInt(Event::slope).toArray();
    }

    int capacity() {
        return capacity;
    }

    boolean isHands() {
        return board.isHands(resource);
    }

    List<Work> works() {
        return Arrays.asList(works);
    }

    /**
     * No timetable that goes on from a state ends before this; exact only where it is more than the
     * deadline.
     */
    int bound(State state, int deadline) {
        long energy = 0;
        for (Work work : works) {
            if (!state.done().get(work.activity())) {
                energy += (long) work.amount() * work.length();
            }
        }
        if (energy == 0) {
            return 0;
        }
        boolean hands = isHands();
        long taken =
                hands
                        ? state.people().taken(board, state.last())
                        : (long) capacity * state.last() + running(state, Integer.MAX_VALUE);
        int runs = hands ? 0 : end(state);
        long most = hands ? ceiling(energy + taken + state.changesToCome(board)) : 0;
        long slope = 0;
        int at = 0;
        for (int event = 0; event < eventBefore.length && energy > 0; event++) {
            if (!state.done().get(eventActivity[event])) {
                energy -= slope * (eventBefore[event] - at);
                at = eventBefore[event];
                if (eventSlope[event] > 0) {
                    long cut = deadline - at < runs ? cut(state, deadline - at) : 0;
                    most = Math.max(most, ceiling(energy + taken - cut) + at);
                }
                slope += eventSlope[event];
            }
        }
        return (int) most;
    }

    private long ceiling(long work) {
        return (work + capacity - 1) / capacity;
    }

    /** When the last of what is under way gives back what it has. */
    private int end(State state) {
        int end = 0;
        for (int at = 0; at < state.open().size(); at++) {
            end = Math.max(end, end(state.open(), at));
        }
        return end;
    }

    private int end(Open open, int at) {
        return open.start(at) + length[open.activity(at)];
    }

    /** What the activities under way take from now until a moment. */
    private long running(State state, int until) {
        Open open = state.open();
        long running = 0;
        for (int at = 0; at < open.size(); at++) {
            long time = Math.min(end(open, at), until) - (long) state.last();
            running += amount[open.activity(at)] * Math.max(0, time);
        }
        return running;
    }

    private long cut(State state, int until) {
        return running(state, Integer.MAX_VALUE) - running(state, until);
    }
}
