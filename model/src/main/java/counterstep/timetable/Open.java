package counterstep.timetable;

/** The activities under way, in order of their numbers, and when each started. */
final class Open {
    static final Open NONE = new Open(0);

    private final int[] activities;
    private final int[] starts;

    private Open(int size) {
        activities = new int[size];
        starts = new int[size];
    }

    int size() {
        return starts.length;
    }

    int activity(int at) {
        return activities[at];
    }

    int start(int at) {
        return starts[at];
    }

    /** One more, and those left out that are over when it starts. */
    Open with(Board board, int activity, int start) {
        return with(board, activity, start, start);
    }

    /** One more, and those left out that are over at a moment. */
    Open with(Board board, int activity, int start, int now) {
        int kept = start + board.duration[activity] > now ? 1 : 0;
        for (int at = 0; at < activities.length; at++) {
            kept += starts[at] + board.duration[activities[at]] > now ? 1 : 0;
        }
        Open more = new Open(kept);
        int to = 0;
        boolean added = start + board.duration[activity] <= now;
        for (int at = 0; at < activities.length; at++) {
            if (!added && activities[at] > activity) {
                more.put(to++, activity, start);
                added = true;
            }
            if (starts[at] + board.duration[activities[at]] > now) {
                more.put(to++, activities[at], starts[at]);
            }
        }
        if (!added) {
            more.put(to, activity, start);
        }
        return more;
    }

    private void put(int to, int activity, int start) {
        activities[to] = activity;
        starts[to] = start;
    }

    /** When all of some activities are over, of those that are under way; at least now. */
    int over(Board board, int[] wanted, int now) {
        int over = now;
        for (int at = 0; at < activities.length; at++) {
            int activity = activities[at];
            for (int one : wanted) {
                if (one == activity) {
                    over = Math.max(over, starts[at] + board.duration[activity]);
                }
            }
        }
        return over;
    }

    /** The first moment from one on at which all needs of an activity fit beside what runs. */
    int fits(Board board, int activity, int earliest) {
        int start = earliest;
        int better = later(board, activity, start);
        while (better > start) {
            start = better;
            better = later(board, activity, start);
        }
        return start;
    }

    /** The same moment if all fits there, else the next one worth trying. */
    private int later(Board board, int activity, int start) {
        for (Need need : board.needs[activity]) {
            if (!board.isHands(need.resource())) {
                int free = freed(board, need, start);
                for (int at = 0; at < starts.length && free == start; at++) {
                    if (starts[at] > start && starts[at] < start + need.time()) {
                        int then = freed(board, need, starts[at]);
                        free = then == starts[at] ? start : then;
                    }
                }
                if (free > start) {
                    return free;
                }
            }
        }
        return start;
    }

    /** The same moment if there is room for a need, else when some of what is in the way ends. */
    private int freed(Board board, Need need, int moment) {
        int taken = need.amount();
        int soonest = Integer.MAX_VALUE;
        for (int at = 0; at < starts.length; at++) {
            for (Need other : board.needs[activities[at]]) {
                int end = starts[at] + other.time();
                boolean here = starts[at] <= moment && moment < end;
                if (here && other.resource() == need.resource()) {
                    taken += other.amount();
                    soonest = Math.min(soonest, end);
                }
            }
        }
        return taken > board.capacity[need.resource()] ? soonest : moment;
    }

    /** Whether from a moment on all is over and given back no later than with others. */
    boolean noWorse(Board board, Open others, int now) {
        int other = 0;
        for (int at = 0; at < activities.length; at++) {
            while (other < others.starts.length && others.activities[other] < activities[at]) {
                other++;
            }
            boolean there =
                    other < others.starts.length && others.activities[other] == activities[at];
            boolean soon = there && starts[at] <= others.starts[other];
            if (!soon && starts[at] + board.duration[activities[at]] > now) {
                return false;
            }
        }
        return true;
    }
}
