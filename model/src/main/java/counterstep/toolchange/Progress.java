package counterstep.toolchange;

/** How far the work is: what is done, what may be done now, and what was done last. */
final class Progress {
    private final ToolGraph graph;
    private final Places done;
    private final Places open;

    /** Done jobs that nothing done follows: who has these done has all done. */
    private final Places outermost;

    private Progress(ToolGraph graph, Places done, Places open, Places outermost) {
        this.graph = graph;
        this.done = done;
        this.open = open;
        this.outermost = outermost;
    }

    /** Some jobs done, all that come before them too. */
    static Progress of(ToolGraph graph, Places done) {
        Places open = Places.below(graph.size());
        Places outermost = Places.below(graph.size());
        for (int job = 0; job < graph.size(); job++) {
            if (done.has(job)) {
                outermost.add(job);
            } else if (done.hasAll(graph.before(job))) {
                open.add(job);
            }
        }
        for (int job = done.next(0); job >= 0; job = done.next(job + 1)) {
            outermost.removeAll(graph.justBefore(job));
        }
        return new Progress(graph, done.copy(), open, outermost);
    }

    Progress copy() {
        return new Progress(graph, done.copy(), open.copy(), outermost.copy());
    }

    /** Does an open job. */
    void take(int job) {
        done.add(job);
        open.remove(job);
        outermost.removeAll(graph.justBefore(job));
        outermost.add(job);
        for (int next : graph.next(job)) {
            if (done.hasAll(graph.justBefore(next))) {
                open.add(next);
            }
        }
    }

    /** Does of some jobs all that are open or become so. */
    void takeAll(Places jobs) {
        for (int job = open.first(jobs); job >= 0; job = open.first(jobs)) {
            take(job);
        }
    }

    Places done() {
        return done;
    }

    Places open() {
        return open;
    }

    Places outermost() {
        return outermost;
    }

    boolean isEnd() {
        return open.isEmpty();
    }
}
