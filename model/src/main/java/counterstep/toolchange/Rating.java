package counterstep.toolchange;

/** What the end of a state costs at least. */
final class Rating {
    private final TurnBound chains;
    private final GroupBounds groups;

    /** Of jobs of several tools the tables know nothing; else they are never the weaker bound. */
    private final boolean needsChains;

    Rating(ToolGraph graph, GroupBounds groups) {
        this.groups = groups;
        chains = new TurnBound(graph);
        boolean runs = false;
        for (int job = 0; job < graph.size(); job++) {
            runs |= !graph.single(job);
        }
        needsChains = runs || groups.isNone();
    }

    Rated start(Turn state) {
        return rated(state, groups.at(state), 0);
    }

    Rated after(Rated before, Turn state) {
        return rated(state, groups.after(before.left, state), before.atLeast);
    }

    private Rated rated(Turn state, short[] left, int atLeastBefore) {
        int rest = groups.sum(left);
        if (needsChains) {
            rest = Math.max(rest, chains.atLeast(state.work.open(), state.hand));
        }
        int atLeast = Math.max(atLeastBefore, state.cost + rest);
        return new Rated(state, left, atLeast);
    }
}
