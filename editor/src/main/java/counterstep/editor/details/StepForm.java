package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ListInput;
import counterstep.editor.form.ListInput.Line;
import counterstep.editor.form.ParsedInput;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.editor.theme.ItemIcon;
import counterstep.estimate.Estimates;
import counterstep.estimate.UseEstimates;
import counterstep.ledger.FittingVerbs;
import counterstep.model.Action;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.TimeSource;
import counterstep.model.Tool;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import javax.swing.JComponent;

/** The fields of a step. */
final class StepForm {
    private final Form form = new Form();
    private final BiConsumer<Step, String> changed;
    private final TextInput title;
    private final ChoiceInput<Phase> phase;
    private final TextBlock text;
    private final ListInput<Action> actions;
    private final ActionForm action;
    private final ChoiceInput<Optional<Tool>> tool;
    private final ParsedInput<OptionalInt> time;
    private final ChoiceInput<TimeSource> timeSource;
    private final RangeFields range;
    private final TimeNote note;
    private final ListInput<Hazard> hazards;
    private final HazardForm hazard;
    private final StandingFields standing;
    private final TextInput second;
    private final TickInput pause;
    private final PhotoWell photos;
    private Optional<Procedure> procedure = Optional.empty();
    private Optional<Step> shown = Optional.empty();

    /**
     * Empty fields.
     *
     * @param changed gets the changed step and what the change is called
     * @param photos stands among them
     */
    StepForm(BiConsumer<Step, String> changed, PhotoWell photos) {
        this.changed = changed;
        this.photos = photos;
        title = new TextInput("Title", tell("Rename step")).named("step.title");
        phase =
                new ChoiceInput<>(
                        "Phase", List.of(Phase.values()), Phase::word, tell("Change phase"));
        text = new TextBlock("Text", 3, tell("Change text")).named("step.text");
        action = new ActionForm(() -> actions().entryChanged());
        actions = actionList(action);
        tool =
                new ChoiceInput<>(
                        "Tool",
                        List.of(Optional.empty()),
                        choice -> choice.map(Tool::name).orElse("by the drive"),
                        tell("Change tool"));
        time =
                new ParsedInput<>(
                                "Time, min:s",
                                Formats.TIME,
                                OptionalInt.empty(),
                                tell("Change time"))
                        .named("step.time");
        timeSource =
                new ChoiceInput<>(
                        "Time is",
                        List.of(TimeSource.values()),
                        TimeSource::word,
                        tell("Change time"));
        range = new RangeFields(tell("Change time"));
        note = new TimeNote(this::takeEstimate);
        hazard = new HazardForm(() -> hazards().entryChanged());
        hazards = hazardList(hazard);
        standing = new StandingFields(tell("Change standing"));
        second =
                new TextInput("A second person", tell("Change second person"))
                        .hint("holds the board");
        pause = new TickInput("safe to pause after it", tell("Change pause"));
        lay();
    }

    private void lay() {
        form.add(title).add(text).add(actions).wide(photos).add(tool, time).add(phase, timeSource);
        range.layInto(form);
        form.wide(note).add(hazards).add(second).add(pause);
        standing.layInto(form);
    }

    private ListInput<Action> actionList(ActionForm form) {
        ListInput<Action> list =
                new ListInput<>(
                        "Actions", this::line, this::freshAction, form, tell("Change actions"));
        return list.named("step.actions");
    }

    private ListInput<Hazard> hazardList(HazardForm form) {
        return new ListInput<>(
                "Hazards", HazardForm::line, HazardForm::fresh, form, tell("Change hazards"));
    }

    private ListInput<Action> actions() {
        return actions;
    }

    private ListInput<Hazard> hazards() {
        return hazards;
    }

    private Runnable tell(String name) {
        return () -> shown.ifPresent(step -> changed.accept(read(step), name));
    }

    JComponent component() {
        return form;
    }

    /** Adds something under the fields, then fills what is left. */
    void end(JComponent foot) {
        form.wide(foot).end();
    }

    void show(Step step, Procedure open) {
        procedure = Optional.of(open);
        shown = Optional.of(step);
        List<Optional<Tool>> tools = new ArrayList<>(List.of(Optional.empty()));
        open.tools().forEach(each -> tools.add(Optional.of(each)));
        tool.offer(tools);
        action.offer(open);
        hazard.offer(open);
        title.show(step.title());
        phase.show(step.phase());
        text.show(step.text());
        actions.show(step.actions());
        tool.show(
                open.tools().stream()
                        .filter(each -> step.tool().equals(Optional.of(each.id())))
                        .findFirst());
        time.show(step.seconds());
        timeSource.show(step.timeSource());
        range.show(step.timeRange());
        note.show(step, Optional.empty());
        hazards.show(step.hazards());
        standing.show(step.standing());
        second.show(step.secondPerson());
        pause.show(step.safeToPause());
        photos.show(step, open);
    }

    /** Says what the step shown may take where it states no time. */
    void estimate(Optional<Estimates> estimates) {
        shown.ifPresent(step -> note.show(step, estimates));
    }

    private void takeEstimate(int seconds) {
        shown.ifPresent(
                step -> {
                    UseEstimates use = new UseEstimates(Map.of(step.id(), seconds));
                    changed.accept(use.of(step), use.name());
                });
    }

    private Step read(Step step) {
        return step.draft()
                .title(title.value())
                .phase(phase.value())
                .text(text.value())
                .actions(actions.value())
                .tool(tool.value().map(Tool::id))
                .seconds(time.value())
                .timeSource(timeSource.value())
                .timeRange(range.read(time.value()))
                .hazards(hazards.value())
                .standing(standing.read())
                .secondPerson(second.value())
                .safeToPause(pause.value())
                .step();
    }

    private Line line(Action each) {
        Optional<Item> item = each.item().map(id -> procedure.orElseThrow().item(id));
        String count =
                item.filter(counted -> counted.quantity() > 1).isPresent()
                        ? each.count() + " "
                        : "";
        return new Line(
                each.verb().word(),
                item.map(ItemIcon::new),
                count + item.map(Item::name).orElse(each.remark()));
    }

    /** Begins with the first item of the register, or with a check where there is none. */
    private Optional<Action> freshAction() {
        Optional<Item> first =
                procedure.stream().flatMap(open -> open.items().stream()).findFirst();
        return Optional.of(
                first.map(
                                item ->
                                        Action.of(
                                                FittingVerbs.of(item).get(0),
                                                item.id(),
                                                item.quantity()))
                        .orElseGet(() -> Action.of(Verb.CHECK, Optional.empty(), 1)));
    }
}
