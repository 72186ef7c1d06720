package counterstep.mirror;

import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What is open of one item, the latest on top. */
final class OpenRemovals {
    private final ItemId item;
    private final List<Removal> all;
    private final Deque<Removal> open = new ArrayDeque<>();

    /** Of the loosened ones, how many were then taken out: putting those back tight undoes both. */
    private int loosenedAndOut;

    OpenRemovals(ItemId item, List<Removal> all) {
        this.item = item;
        this.all = all;
    }

    void take(StepId step, Action action) {
        int count = action.count();
        switch (action.verb()) {
            case LOOSEN, UNCLIP, CUT, DISCONNECT, MOVE_ASIDE, TAKE_AWAY ->
                    begin(step, action.verb(), count);
            case REMOVE -> remove(step, count);
            case NOTE, RELEASE, ISOLATE -> beginOnce(step, action.verb());
            case TIGHTEN -> end(step, count, EnumSet.of(Verb.LOOSEN));
            case REINSTALL, FIT_NEW -> putBack(step, action);
            case CLIP -> end(step, count, EnumSet.of(Verb.UNCLIP));
            case RECONNECT -> end(step, count, EnumSet.of(Verb.DISCONNECT));
            case PRESS, REJOIN -> end(step, 1, EnumSet.of(Verb.RELEASE));
            case RETURN -> end(step, count, EnumSet.of(Verb.MOVE_ASIDE));
            case BRING_IN -> end(step, count, EnumSet.of(Verb.TAKE_AWAY, Verb.REMOVE));
            case RESTORE -> end(step, 1, EnumSet.of(Verb.NOTE));
            case RESTORE_POWER -> end(step, 1, EnumSet.of(Verb.ISOLATE));
            case DISCARD, LAY, PROVE_DEAD, APPLY, CLEAN, CHECK, ALIGN, WAIT -> {}
        }
    }

    private void begin(StepId step, Verb verb, int count) {
        Removal removal = new Removal(item, step, verb, count);
        all.add(removal);
        open.push(removal);
    }

    /** What has no count is opened once, however often it is written. */
    private void beginOnce(StepId step, Verb verb) {
        if (left(verb) == 0) {
            begin(step, verb, 1);
        }
    }

    /** Loose ones are taken out first. */
    private void remove(StepId step, int count) {
        loosenedAndOut += Math.min(count, left(Verb.LOOSEN) - loosenedAndOut);
        begin(step, Verb.REMOVE, count);
    }

    private void putBack(StepId step, Action action) {
        int count = action.count();
        int fromAside = left(Verb.TAKE_AWAY);
        end(step, count, EnumSet.of(Verb.REMOVE, Verb.TAKE_AWAY, Verb.CUT));
        if (!action.aside()) {
            end(step, fromAside - left(Verb.TAKE_AWAY), EnumSet.of(Verb.MOVE_ASIDE));
        }
        int loosened = Math.min(count, loosenedAndOut);
        loosenedAndOut -= loosened;
        if (!action.fingerTight()) {
            end(step, loosened, EnumSet.of(Verb.LOOSEN));
        }
    }

    private int left(Verb verb) {
        return open.stream().filter(one -> one.verb() == verb).mapToInt(Removal::open).sum();
    }

    private void end(StepId step, int count, Set<Verb> verbs) {
        int still = count;
        for (Removal removal : open) {
            if (verbs.contains(removal.verb())) {
                still -= removal.close(step, still);
            }
        }
        open.removeIf(removal -> removal.open() == 0);
        loosenedAndOut = Math.min(loosenedAndOut, left(Verb.LOOSEN));
    }
}
