package counterstep.export.bench;

import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Item;
import counterstep.model.Numbers;
import counterstep.model.Part;
import counterstep.model.SignalWord;
import counterstep.model.Step;
import counterstep.model.SupplyUse;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is counted, set, read and written down at one step. */
final class StepNotes {
    private static final Set<Verb> POWER =
            Set.of(Verb.ISOLATE, Verb.PROVE_DEAD, Verb.RESTORE_POWER);

    private final Print print;
    private final Step step;
    private final List<Note> notes = new ArrayList<>();

    StepNotes(Print print, Step step) {
        this.print = print;
        this.step = step;
    }

    List<Note> all() {
        step.actions().forEach(this::act);
        if (needsInitials()) {
            notes.add(Note.toFill("initials", ""));
        }
        return notes;
    }

    /** Whoever answers for the power being off, or for a hazard to people, signs for it. */
    private boolean needsInitials() {
        return step.actions().stream().anyMatch(action -> POWER.contains(action.verb()))
                || step.hazards().stream().anyMatch(hazard -> hazard.signal() != SignalWord.NOTICE);
    }

    private void act(Action action) {
        Optional<Item> item = action.item().map(print.facts().index()::item);
        int before = notes.size();
        item.ifPresent(
                acted ->
                        acted.match(new ItemNote(step, action, !isCountedAlone()))
                                .ifPresent(notes::add));
        boolean readingAsked = notes.subList(before, notes.size()).stream().anyMatch(Note::blank);
        if (!action.reading().isBlank() && !readingAsked) {
            notes.add(Note.reading(action.reading(), ""));
        }
        action.waiting()
                .ifPresent(
                        wait ->
                                say(
                                        Numbers.minutesAndSeconds(wait.seconds())
                                                + " min, "
                                                + (wait.attendance() == Attendance.WATCHED
                                                        ? "stay beside it"
                                                        : "nobody is needed")));
        for (SupplyUse use : action.supplies()) {
            say((use.amount() + " " + print.facts().index().supply(use.supply()).name()).strip());
        }
        say(action.poweredTest() ? "power on" : "");
    }

    /** Whether no more than one kind of thing is counted, so that the title can name it. */
    private boolean isCountedAlone() {
        return step.actions().stream()
                        .flatMap(action -> action.item().stream())
                        .distinct()
                        .map(print.facts().index()::item)
                        .filter(item -> !(item instanceof Part))
                        .count()
                <= 1;
    }

    private void say(String words) {
        if (!words.isBlank()) {
            notes.add(Note.of(words));
        }
    }
}
