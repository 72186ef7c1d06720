package counterstep.implied;

import counterstep.model.Verb;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Of the actions on one item, which one takes what another has laid down; the last laid first. */
final class Mat {
    private static final Set<Verb> TO_THE_MAT = EnumSet.of(Verb.REMOVE, Verb.TAKE_AWAY);
    private static final Set<Verb> FROM_THE_MAT =
            EnumSet.of(Verb.REINSTALL, Verb.BRING_IN, Verb.DISCARD);

    private Mat() {}

    /**
     * Two actions on one piece.
     *
     * @param laid the earlier one
     * @param taken the later one
     */
    record Handling(Act laid, Act taken) {}

    /** What is thrown away or put back lay on the mat before. */
    static List<Handling> fromTheMat(List<Act> acts) {
        return handlings(acts, TO_THE_MAT, FROM_THE_MAT);
    }

    /** What is fitted new stands in for what was thrown away. */
    static List<Handling> newForOld(List<Act> acts) {
        return handlings(acts, EnumSet.of(Verb.DISCARD), EnumSet.of(Verb.FIT_NEW));
    }

    private static List<Handling> handlings(List<Act> acts, Set<Verb> laying, Set<Verb> taking) {
        List<Handling> handlings = new ArrayList<>();
        Deque<Act> lying = new ArrayDeque<>();
        for (Act act : acts) {
            for (int one = 0; one < act.action().count(); one++) {
                if (laying.contains(act.verb())) {
                    lying.push(act);
                } else if (taking.contains(act.verb()) && !lying.isEmpty()) {
                    handlings.add(new Handling(lying.pop(), act));
                }
            }
        }
        return handlings;
    }
}
