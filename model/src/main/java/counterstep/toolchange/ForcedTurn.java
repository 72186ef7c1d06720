package counterstep.toolchange;

/**
 * Tells when the next tool can be known without trying another. A turn of a tool now does some
 * jobs; if every other job to come that uses the tool is parted from one of them by a job of
 * another tool in between, some best order begins with that turn: in any best order the first turn
 * of the tool holds none of the others, so its jobs can be moved to the front, where they cost one
 * turn, and that turn is gone.
 */
final class ForcedTurn {
    private final ToolGraph graph;

    /** By job of a single tool: later jobs that use its tool, with another tool in between. */
    private final Places[] parted;

    private final Places[] users;
    private final Places[] begun;

    ForcedTurn(ToolGraph graph) {
        this.graph = graph;
        int size = graph.size();
        users = empty(graph.tools(), size);
        begun = empty(graph.tools(), size);
        for (int job = 0; job < size; job++) {
            for (int tool : graph.word(job)) {
                users[tool].add(job);
            }
            if (!graph.single(job)) {
                begun[graph.first(job)].add(job);
            }
        }
        parted = new Places[size];
        for (int job = 0; job < size; job++) {
            if (graph.single(job) && parted[job] == null) {
                part(job);
            }
        }
    }

    private static Places[] empty(int count, int size) {
        Places[] sets = new Places[count];
        for (int at = 0; at < count; at++) {
            sets[at] = Places.below(size);
        }
        return sets;
    }

    /** Depth first without recursion: a chain of a thousand jobs must not end the stack. */
    private void part(int start) {
        int tool = graph.first(start);
        int[] stack = new int[graph.size() + 1];
        int[] progress = new int[graph.size() + 1];
        int depth = 0;
        stack[0] = start;
        while (depth >= 0) {
            int job = stack[depth];
            int[] next = graph.next(job);
            int to = -1;
            while (progress[depth] < next.length && to < 0) {
                int candidate = next[progress[depth]++];
                if (goesOn(candidate, tool) && parted[candidate] == null) {
                    to = candidate;
                }
            }
            if (to >= 0) {
                stack[++depth] = to;
                progress[depth] = 0;
            } else {
                parted[job] = joined(job, tool);
                depth--;
            }
        }
    }

    private boolean goesOn(int job, int tool) {
        return graph.single(job) && graph.first(job) == tool;
    }

    private Places joined(int job, int tool) {
        Places all = Places.below(graph.size());
        for (int next : graph.next(job)) {
            if (goesOn(next, tool)) {
                all.addAll(parted[next]);
            } else {
                Places later = graph.after(next).copy();
                later.retainAll(users[tool]);
                all.addAll(later);
            }
        }
        return all;
    }

    /**
     * Whether a turn may come first.
     *
     * @param before what was done before it
     * @param after what is done after it
     * @param tool the tool of the turn
     */
    boolean isForced(Places before, Places after, int tool) {
        Places rest = users[tool].copy();
        rest.removeAll(after);
        if (rest.isEmpty()) {
            return true;
        }
        Places turn = after.copy();
        turn.removeAll(before);
        for (int job = turn.next(0); job >= 0; job = turn.next(job + 1)) {
            rest.removeAll(parted[job]);
        }
        return rest.isEmpty();
    }

    /** Whether a job of several tools is still to come that goes on with a tool. */
    boolean goesOnWith(int tool, Places done) {
        return tool >= 0 && !done.hasAll(begun[tool]);
    }
}
