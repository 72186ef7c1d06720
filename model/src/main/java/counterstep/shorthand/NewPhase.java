package counterstep.shorthand;

import counterstep.ledger.Turn;
import counterstep.model.Phase;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;

/**
 * The phase of a new step: that of the step above, moved on by the turn of its verbs. It never goes
 * back: what is taken off below a step of reassembly is reassembly.
 */
final class NewPhase {
    private NewPhase() {}

    static Phase of(Optional<Phase> above, List<Understood> actions) {
        Optional<Verb> told =
                actions.stream()
                        .map(one -> one.action().verb())
                        .filter(verb -> least(verb, above) != Phase.PREPARE)
                        .findFirst();
        if (actions.isEmpty() && above.isEmpty()) {
            return Phase.TEARDOWN;
        }
        if (exchanges(actions)) {
            return above.filter(phase -> phase.compareTo(Phase.SERVICE) > 0).orElse(Phase.SERVICE);
        }
        Phase least = told.map(verb -> least(verb, above)).orElse(Phase.PREPARE);
        return above.filter(phase -> phase.compareTo(least) > 0).orElse(least);
    }

    /** Off, thrown away and fitted new in one step: what the work is for. */
    private static boolean exchanges(List<Understood> actions) {
        List<Verb> verbs = actions.stream().map(one -> one.action().verb()).toList();
        return verbs.contains(Verb.FIT_NEW) && Turn.of(verbs.get(0)) == Turn.APART;
    }

    /** The earliest phase that has such a verb; what only looks or powers off can come first. */
    private static Phase least(Verb verb, Optional<Phase> above) {
        if (verb == Verb.ISOLATE || verb == Verb.PROVE_DEAD) {
            return Phase.PREPARE;
        }
        if (verb == Verb.DISCARD || verb == Verb.LAY) {
            return Phase.SERVICE;
        }
        return switch (Turn.of(verb)) {
            case APART -> Phase.TEARDOWN;
            case BACK -> Phase.REASSEMBLY;
            case NEITHER -> above.orElse(Phase.PREPARE);
        };
    }
}
