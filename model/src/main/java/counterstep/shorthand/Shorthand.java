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
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads a line in the shorthand of the trade, such as '4 x T5 3.5 lower frame out; lid off', as the
 * new step that it asks for. A line that begins with {@code >} adds to the step above instead, one
 * that begins with {@code !} warns before it, one of facts in brackets alone changes items. Any
 * line can be read: what is not understood is the title.
 */
public final class Shorthand {
    /** Begins a line that adds to a step rather than making one. */
    public static final String INTO = ">";

    /** Begins a line that warns. */
    public static final String WARNS = "!";

    private final Procedure before;
    private final Optional<Step> above;
    private final TypedLine line;
    private final Told told;

    private Shorthand(Procedure before, Optional<Step> above, TypedLine line) {
        this.before = before;
        this.above = above;
        this.line = line;
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
        Optional<Step> above = above(procedure, selected);
        if (words.startsWith(WARNS)) {
            return HazardLine.read(procedure, above, words.substring(WARNS.length()).strip());
        }
        boolean into = words.startsWith(INTO);
        if (words.substring(into ? INTO.length() : 0).isBlank()) {
            return Optional.empty();
        }
        Vocabulary vocabulary = Vocabulary.orEnglish(procedure.titleBlock().language());
        TypedLine typed = TypedLine.read(vocabulary, words);
        Shorthand reading = new Shorthand(procedure, above, typed);
        if (reading.told.onlyRegisters()) {
            return Optional.of(reading.ofItems());
        }
        return Optional.of(
                into && above.isPresent() ? reading.intoStep(above.get()) : reading.newStep());
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

    private Reading ofItems() {
        return new Reading(
                Optional.empty(),
                false,
                "",
                List.of(),
                "items: " + told.explanation(),
                new Edits("Add facts", told.edits()));
    }

    private Reading newStep() {
        Phase phase =
                line.phase().orElseGet(() -> NewPhase.of(above.map(Step::phase), told.actions()));
        StepId id = FreshIds.step(told.after());
        String title = title();
        Step step =
                told.onto(new StepDraft(id, phase, title), TimeSource.ESTIMATED, false)
                        .text(told.text(line.text()))
                        .actions(actions())
                        .step();
        List<Edit> edits = new ArrayList<>(told.edits());
        edits.add(new AddStep(step, above.map(Step::id), Optional.of(LinkOrigin.AS_TOLD)));
        String place =
                above.map(one -> "new step below " + before.pageNumber(one.id()))
                        .orElse("first step");
        return reading(id, true, title, place, new Edits("Add step", edits));
    }

    /** A step needs a title: where only a time or a tool is told, these words are it. */
    private String title() {
        return Stream.of(told.title(), String.join(", ", line.entries()), line.text().orElse(""))
                .filter(words -> !words.isEmpty())
                .findFirst()
                .orElseGet(() -> line.phase().map(Phase::word).orElse(""));
    }

    private Reading reading(StepId id, boolean fresh, String title, String place, Edit edit) {
        String as = line.phase().map(phase -> ", " + phase.word()).orElse("");
        String named = line.title().isEmpty() ? "" : "'" + told.title() + "'";
        String text = line.text().map(words -> "text as typed").orElse("");
        String all =
                Stream.of(named, told.explanation(), text)
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining("; "));
        return new Reading(
                Optional.of(id), fresh, title, told.actions(), place + as + ": " + all, edit);
    }

    private Reading intoStep(Step step) {
        List<Action> actions = new ArrayList<>(step.actions());
        actions.addAll(actions());
        String old = line.text().orElse(step.text());
        String added = line.text().isPresent() ? told.unread() : told.added();
        String text = (old + " " + added).strip();
        StepDraft changed =
                told.onto(step.draft(), step.timeSource(), step.safeToPause())
                        .phase(line.phase().orElse(step.phase()))
                        .title(line.title().isEmpty() ? step.title() : told.title())
                        .actions(actions)
                        .text(text);
        List<Edit> edits = new ArrayList<>(told.edits());
        edits.add(new ChangeStep(changed.step(), name()));
        String place = "into step " + before.pageNumber(step.id());
        return reading(step.id(), false, told.unread(), place, new Edits(name(), edits));
    }

    private String name() {
        if (!told.actions().isEmpty()) {
            return "Add action";
        }
        return told.unread().isEmpty() ? "Change step" : "Add to text";
    }

    private List<Action> actions() {
        return told.actions().stream().map(Understood::action).toList();
    }
}
