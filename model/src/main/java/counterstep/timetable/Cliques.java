package counterstep.timetable;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Sets of activities no two of which can run at once, because together they ask for too much or one
 * comes before the other. Each is a resource of one unit: a bound that no single resource shows
 * (Mingozzi, Maniezzo, Ricciardelli and Bianco 1998, from memory). Only activities that keep all
 * they need from start to end take part.
 */
final class Cliques {
    private static final int MOST = 24;
    private static final int LARGEST = 128;

    private final Project project;
    private final BitSet[] exclude;

    private Cliques(Project project) {
        this.project = project;
        int size = project.activities().size();
        exclude = new BitSet[size];
        BitSet[] after = project.after();
        for (int one = 0; one < size; one++) {
            exclude[one] = new BitSet();
        }
        for (int one = 0; one < size; one++) {
            for (int other = one + 1; other < size; other++) {
                if (after[one].get(other) || after[other].get(one) || tooMuch(one, other)) {
                    exclude[one].set(other);
                    exclude[other].set(one);
                }
            }
        }
    }

    /** The heaviest around each activity, by greed; each set once. */
    static List<BitSet> of(Project project) {
        if (!project.activities().stream().allMatch(Activity::keepsAll)
                || project.activities().size() > LARGEST) {
            return List.of();
        }
        Cliques cliques = new Cliques(project);
        List<BitSet> found = new ArrayList<>();
        for (int start = 0; start < cliques.exclude.length; start++) {
            BitSet clique = cliques.around(start);
            if (cliques.useful(clique) && !found.contains(clique)) {
                found.add(clique);
            }
        }
        found.sort((one, other) -> Long.compare(cliques.weight(other), cliques.weight(one)));
        return found.size() > MOST ? found.subList(0, MOST) : found;
    }

    /** A chain of links alone says nothing new. */
    private boolean useful(BitSet clique) {
        return clique.cardinality() > 2;
    }

    private long weight(BitSet clique) {
        long sum = 0;
        for (int one = clique.nextSetBit(0); one >= 0; one = clique.nextSetBit(one + 1)) {
            sum += duration(one);
        }
        return sum;
    }

    private BitSet around(int start) {
        BitSet clique = new BitSet();
        clique.set(start);
        BitSet rest = (BitSet) exclude[start].clone();
        if (allExclude(rest)) { // all there are for one person
            clique.or(rest);
            return clique;
        }
        while (!rest.isEmpty()) {
            int best = mostWorth(rest);
            clique.set(best);
            rest.and(exclude[best]);
        }
        return clique;
    }

    private boolean allExclude(BitSet some) {
        for (int one = some.nextSetBit(0); one >= 0; one = some.nextSetBit(one + 1)) {
            BitSet left = (BitSet) some.clone();
            left.clear(one);
            left.andNot(exclude[one]);
            if (!left.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private int mostWorth(BitSet rest) {
        int best = -1;
        long most = -1;
        for (int one = rest.nextSetBit(0); one >= 0; one = rest.nextSetBit(one + 1)) {
            long worth = worth(one, rest);
            if (worth > most) {
                best = one;
                most = worth;
            }
        }
        return best;
    }

    private long worth(int one, BitSet rest) {
        if (duration(one) == 0) {
            return 0;
        }
        BitSet left = (BitSet) exclude[one].clone();
        left.and(rest);
        return 2L * duration(one) + weight(left) / 4;
    }

    private int duration(int one) {
        return project.activities().get(one).duration();
    }

    private boolean tooMuch(int one, int other) {
        int[] sum = new int[project.capacities().size()];
        for (int activity : new int[] {one, other}) {
            for (Need need : project.activities().get(activity).needs()) {
                if (need.work() > 0) {
                    sum[need.resource()] += need.amount();
                }
            }
        }
        for (int resource = 0; resource < sum.length; resource++) {
            if (sum[resource] > project.capacities().get(resource)) {
                return true;
            }
        }
        return false;
    }
}
