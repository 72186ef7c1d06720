package counterstep.links;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The runs of steps that loosen, or tighten, one set of fasteners that has a pattern of tightening.
 * Tightening after loosening begins another run. Putting in finger-tight is not tightening yet.
 */
final class Patterns {
    private enum Way {
        NONE,
        OFF,
        ON
    }

    private Patterns() {}

    static List<Company> in(Procedure procedure) {
        List<Company> found = new ArrayList<>();
        for (Item item : procedure.items()) {
            if (item instanceof FastenerSet set && !set.tightening().isBlank()) {
                collect(set, procedure.steps(), found);
            }
        }
        return found;
    }

    private static void collect(FastenerSet set, List<Step> page, List<Company> found) {
        List<StepId> run = new ArrayList<>();
        Way way = Way.NONE;
        for (Step step : page) {
            for (Action action : step.actions()) {
                Way next = action.item().equals(Optional.of(set.id())) ? way(action) : Way.NONE;
                if (next != Way.NONE && next != way) {
                    close(set, run, found);
                    way = next;
                }
                if (next != Way.NONE && !run.contains(step.id())) {
                    run.add(step.id());
                }
            }
        }
        close(set, run, found);
    }

    private static void close(FastenerSet set, List<StepId> run, List<Company> found) {
        if (run.size() > 1) {
            found.add(new Company(Company.Reason.PATTERN, run, Optional.of(set.id())));
        }
        run.clear();
    }

    private static Way way(Action action) {
        return switch (action.verb()) {
            case LOOSEN, REMOVE -> Way.OFF;
            case TIGHTEN, REINSTALL, FIT_NEW -> action.fingerTight() ? Way.NONE : Way.ON;
            case DISCARD, UNCLIP, CLIP, CUT, DISCONNECT, RECONNECT, RELEASE, LAY -> Way.NONE;
            case PRESS, REJOIN, MOVE_ASIDE, RETURN, TAKE_AWAY, BRING_IN, NOTE -> Way.NONE;
            case RESTORE, ISOLATE, PROVE_DEAD, RESTORE_POWER, APPLY, CLEAN -> Way.NONE;
            case CHECK, ALIGN, WAIT -> Way.NONE;
        };
    }
}
