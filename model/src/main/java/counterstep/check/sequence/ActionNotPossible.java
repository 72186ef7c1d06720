package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Happening;
import counterstep.ledger.SupplyHistory;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A verb needs its item in the state that it starts from. */
final class ActionNotPossible implements Check {
    @Override
    public About about() {
        return new About(
                "action-not-possible",
                Severity.ERROR,
                "An action finds its item in a state from which it cannot be done.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<Failed> failures =
                facts.failures(FailureKind.PRECONDITION).stream()
                        .filter(failed -> !toldElsewhere(facts, failed))
                        .toList();
        return Failed.grouped(failures, ActionNotPossible::fault).stream()
                .map(fault -> finding(facts, fault));
    }

    /** A verb that never fits is one fault an item; all else one an action. */
    private static Object fault(Failed failed) {
        return failed.failure().impossible() ? failed.item() : failed.place();
    }

    private static boolean toldElsewhere(Facts facts, Failed failed) {
        ItemId id = failed.item();
        return switch (failed.happening().what().verb()) {
            case NOTE ->
                    facts.allFailures(FailureKind.NOTE).stream()
                            .anyMatch(note -> note.about().equals(id));
            case RESTORE -> facts.ledger().happenings(id, Verb.NOTE).isEmpty();
            case RESTORE_POWER -> neverIsolated(facts, id);
            case REINSTALL -> renewed(facts.index().item(id));
            case LOOSEN, TIGHTEN, REMOVE, DISCARD, FIT_NEW, UNCLIP, CLIP, CUT -> false;
            case DISCONNECT, RECONNECT, RELEASE, LAY, PRESS, REJOIN, MOVE_ASIDE -> false;
            case RETURN, TAKE_AWAY, BRING_IN, ISOLATE, PROVE_DEAD -> false;
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> false;
        };
    }

    /** Then what it feeds is touched while live, which says more. */
    private static boolean neverIsolated(Facts facts, ItemId id) {
        if (!(facts.index().item(id) instanceof EnergySource source)) {
            return false;
        }
        SupplyHistory history = facts.ledger().history(source);
        return history.isolated().isEmpty() && !history.touches().isEmpty();
    }

    /** Put back old, which has its own check, whether it was thrown away before or not. */
    private static boolean renewed(Item item) {
        return (item instanceof Part part && part.renewed())
                || (item instanceof FastenerSet set && set.renew());
    }

    private Finding finding(Facts facts, List<Failed> fault) {
        Failed first = fault.get(0);
        Happening happening = first.happening();
        Action action = happening.what();
        Phrases phrases = facts.phrases();
        List<StepId> steps = new ArrayList<>(Failed.steps(fault));
        steps.addAll(facts.outcome(first.item()));
        String message =
                phrases.step(first.step())
                        + " cannot "
                        + action.verb().word()
                        + " "
                        + phrases.some(first.item(), action.count()).text()
                        + ": "
                        + new WhyNot(facts, first).text()
                        + ".";
        List<ItemId> items = new ArrayList<>(List.of(first.item()));
        fault.forEach(failed -> items.add(failed.about()));
        return about().finding(
                        Phrases.sentence(message), facts.placeFirst(first.step(), steps), items);
    }
}
