package counterstep.links;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which links follow from others, so that they say nothing: the transitive reduction (Aho, Garey
 * and Ullman, SIAM Journal on Computing 1, 1972; from memory). A link follows when some step must
 * come after its first and before its second and lies on a loop with neither. A link on a loop
 * never follows, nor do several links into the same loop follow from each other; so all that follow
 * may be left out together, and what comes before what stays as it was. Time n · m / 64 for n steps
 * and m links, beside the reachability that {@link Precedence} has.
 */
public final class Reduction {
    private final Precedence precedence;
    private final Set<LinkEnds> following = new LinkedHashSet<>();

    private Reduction(Precedence precedence) {
        this.precedence = precedence;
        Reachability reachability = precedence.reachability();
        for (int from = 0; from < reachability.size(); from++) {
            BitSet farther = farther(from);
            for (int to : precedence.next().get(from)) {
                if (farther.get(to) && !reachability.reaches(to, from)) {
                    following.add(ends(from, to));
                }
            }
        }
    }

    /** Reduces the links of a document. */
    public static Reduction of(Precedence precedence) {
        return new Reduction(precedence);
    }

    /** What comes after something that comes after a place, going round no loop. */
    private BitSet farther(int from) {
        Reachability reachability = precedence.reachability();
        BitSet farther = new BitSet();
        for (int member : loopOf(from)) {
            for (int next : precedence.next().get(member)) {
                if (!reachability.together(from, next)) {
                    farther.or(reachability.beyond(next));
                }
            }
        }
        return farther;
    }

    private int[] loopOf(int place) {
        Reachability reachability = precedence.reachability();
        if (!reachability.reaches(place, place)) {
            return new int[] {place};
        }
        BitSet others = new BitSet();
        for (int other = 0; other < reachability.size(); other++) {
            others.set(other, reachability.together(place, other));
        }
        return others.stream().toArray();
    }

    private LinkEnds ends(int from, int to) {
        return new LinkEnds(precedence.steps().get(from), precedence.steps().get(to));
    }

    /** The links that follow from others, in page order of their first steps. */
    public Set<LinkEnds> following() {
        return Collections.unmodifiableSet(following);
    }

    /**
     * From which links one of {@link #following()} follows: the steps of a shortest way along links
     * that do not follow themselves, both its ends included.
     *
     * @throws IllegalArgumentException if the link does not follow
     */
    public List<StepId> way(LinkEnds link) {
        if (!following.contains(link)) {
            throw new IllegalArgumentException(link + " does not follow");
        }
        int start = precedence.page(link.before());
        int goal = precedence.page(link.after());
        Map<Integer, Integer> cameFrom = new HashMap<>(Map.of(start, start));
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        while (!cameFrom.containsKey(goal)) {
            int here = waiting.remove();
            for (int next : precedence.next().get(here)) {
                if (!following.contains(ends(here, next)) && !cameFrom.containsKey(next)) {
                    cameFrom.put(next, here);
                    waiting.add(next);
                }
            }
        }
        Deque<Integer> way = new ArrayDeque<>(List.of(goal));
        while (way.getFirst() != start) {
            way.addFirst(cameFrom.get(way.getFirst()));
        }
        return precedence.ids(List.copyOf(way));
    }
}
