package counterstep.shorthand;

import counterstep.edit.AddStep;
import counterstep.edit.ChangeStep;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.edit.FreshIds;
import counterstep.model.Action;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads a line in the shorthand of the trade, such as '4 x T5 3.5 lower frame out; lid off', as the
 * new step that it asks for. A line that begins with {@code >} adds to the step above instead. Any
 * line can be read: what is not understood is the title.
 */
public final class Shorthand {
    /** Begins a line that adds to a step rather than making one. */
    public static final String INTO = ">";

    private final Procedure before;
    private final Optional<Step> above;
    private final Told told;

    private Shorthand(Procedure before, Optional<Step> above, String line) {
        this.before = before;
        this.above = above;
        this.told = new Told(before, above.map(Step::phase), line);
    }

    /**
     * Reads a line.
     *
     * @param selected the step that a new one comes below; empty = the last of the page
     * @return nothing for a line without words
     */
    public static Optional<Reading> read(
            Procedure procedure, Optional<StepId> selected, String line) {
        String words = line.strip();
        boolean into = words.startsWith(INTO);
        String said = into ? words.substring(INTO.length()).strip() : words;
        if (said.isEmpty()) {
            return Optional.empty();
        }
        Shorthand reading = new Shorthand(procedure, above(procedure, selected), said);
        return Optional.of(
                into && reading.above.isPresent()
                        ? reading.intoStep(reading.above.get())
                        : reading.newStep());
    }

    private static Optional<Step> above(Procedure procedure, Optional<StepId> selected) {
        List<Step> steps = procedure.steps();
        return selected.map(procedure::step)
                .or(
                        () ->
                                steps.isEmpty()
                                        ? Optional.empty()
                                        : Optional.of(steps.get(steps.size() - 1)));
    }

    private Reading newStep() {
        Phase phase = NewPhase.of(above.map(Step::phase), told.actions());
        StepId id = FreshIds.step(told.after());
        Step step = Step.titled(id, phase, told.title()).draft().actions(actions()).step();
        List<Edit> edits = new ArrayList<>(told.edits());
        edits.add(new AddStep(step, above.map(Step::id), Optional.of(LinkOrigin.AS_TOLD)));
        String place =
                above.map(one -> "new step below " + before.pageNumber(one.id()))
                        .orElse("first step");
        return new Reading(
                id,
                true,
                told.title(),
                told.actions(),
                place + ": " + told.explanation(),
                new Edits("Add step", edits));
    }

    private Reading intoStep(Step step) {
        List<Action> actions = new ArrayList<>(step.actions());
        actions.addAll(actions());
        String text =
                List.of(step.text(), told.unread()).stream()
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(" "));
        String name = told.actions().isEmpty() ? "Add to text" : "Add action";
        List<Edit> edits = new ArrayList<>(told.edits());
        edits.add(new ChangeStep(step.draft().actions(actions).text(text).step(), name));
        return new Reading(
                step.id(),
                false,
                told.unread(),
                told.actions(),
                "into step " + before.pageNumber(step.id()) + ": " + told.explanation(),
                new Edits(name, edits));
    }

    private List<Action> actions() {
        return told.actions().stream().map(Understood::action).toList();
    }
}
