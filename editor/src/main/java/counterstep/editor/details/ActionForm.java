package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.EntryForm;
import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.ledger.FittingVerbs;
import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.swing.JComponent;

/** The fields of one action of a step. */
final class ActionForm implements EntryForm<Action> {
    private final Form form = new Form();
    private final ChoiceInput<Optional<Item>> item;
    private final ChoiceInput<Verb> verb;
    private final ParsedInput<Integer> count;
    private final ChoiceInput<Optional<Tool>> tool;
    private final ParsedInput<OptionalDouble> torque;
    private final ParsedInput<OptionalInt> waiting;
    private final ChoiceInput<Attendance> attendance;
    private final TickInput fingerTight;
    private final TickInput aside;
    private final TickInput poweredTest;
    private final TextInput reading;
    private final TextInput remark;
    private final SupplyInput supplies;
    private final Runnable changed;
    private Optional<Procedure> procedure = Optional.empty();
    private Optional<Action> shown = Optional.empty();

    ActionForm(Runnable changed) {
        this.changed = changed;
        item =
                new ChoiceInput<Optional<Item>>(
                                "Item",
                                List.of(Optional.empty()),
                                choice -> choice.map(Item::name).orElse("no item"),
                                this::otherItem)
                        .named("action.item");
        verb =
                new ChoiceInput<>("Do", List.of(Verb.values()), Verb::word, changed)
                        .named("action.verb");
        count = new ParsedInput<>("Count", Formats.COUNT, 1, changed).named("action.count");
        tool =
                new ChoiceInput<>(
                        "Tool, if not the step's",
                        List.of(Optional.empty()),
                        choice -> choice.map(Tool::name).orElse("the step's"),
                        changed);
        torque = new ParsedInput<>("Torque, cN·m", Formats.SIZE, OptionalDouble.empty(), changed);
        waiting = new ParsedInput<>("Then wait, min:s", Formats.TIME, OptionalInt.empty(), changed);
        attendance =
                new ChoiceInput<>(
                        "While waiting", List.of(Attendance.values()), Attendance::word, changed);
        fingerTight = new TickInput("finger-tight: seated, can still move", changed);
        aside = new TickInput("beside its place, to be returned", changed);
        poweredTest = new TickInput("part of a powered test", changed);
        reading = new TextInput("To note or measure", changed).hint("height in mm, 2.0 to 2.2");
        remark = new TextInput("How", changed).hint("latch up first");
        supplies = new SupplyInput(changed);
        lay();
    }

    private void lay() {
        form.add(verb, count)
                .add(item)
                .add(tool)
                .add(torque, waiting)
                .add(attendance)
                .add(fingerTight)
                .add(aside)
                .add(poweredTest)
                .add(reading)
                .add(remark)
                .add(supplies.input());
    }

    /** Offers the items, tools and supplies of a procedure. */
    void offer(Procedure open) {
        procedure = Optional.of(open);
        List<Optional<Item>> items = new ArrayList<>(List.of(Optional.empty()));
        open.items().forEach(each -> items.add(Optional.of(each)));
        item.offer(items);
        List<Optional<Tool>> tools = new ArrayList<>(List.of(Optional.empty()));
        open.tools().forEach(each -> tools.add(Optional.of(each)));
        tool.offer(tools);
        supplies.offer(open);
    }

    /** Another item may know other verbs, and its own number. */
    private void otherItem() {
        Optional<Item> chosen = item.value();
        verb.offer(verbs(chosen));
        count.show(chosen.map(Item::quantity).orElse(1));
        changed.run();
    }

    private static List<Verb> verbs(Optional<Item> item) {
        return item.map(FittingVerbs::of).orElseGet(FittingVerbs::ofNoItem);
    }

    @Override
    public JComponent component() {
        return form;
    }

    @Override
    public void show(Action action) {
        shown = Optional.of(action);
        Optional<Item> about = action.item().flatMap(this::find);
        List<Verb> offered = new ArrayList<>(verbs(about));
        if (!offered.contains(action.verb())) {
            offered.add(action.verb());
        }
        verb.offer(offered);
        item.show(about);
        verb.show(action.verb());
        count.show(action.count());
        tool.show(action.tool().flatMap(this::findTool));
        torque.show(Torques.centinewtonMetres(action.torque()));
        waiting.show(
                action.waiting()
                        .map(wait -> OptionalInt.of(wait.seconds()))
                        .orElse(OptionalInt.empty()));
        attendance.show(action.waiting().map(Wait::attendance).orElse(Attendance.WATCHED));
        fingerTight.show(action.fingerTight());
        aside.show(action.aside());
        poweredTest.show(action.poweredTest());
        reading.show(action.reading());
        remark.show(action.remark());
        supplies.show(action.supplies());
    }

    private Optional<Item> find(ItemId wanted) {
        return procedure.map(open -> open.item(wanted));
    }

    private Optional<Tool> findTool(ToolId wanted) {
        return procedure.stream()
                .flatMap(open -> open.tools().stream())
                .filter(each -> each.id().equals(wanted))
                .findFirst();
    }

    @Override
    public Action read() {
        Action old = shown.orElseThrow();
        return new Action(
                verb.value(),
                item.value().map(Item::id),
                count.value(),
                fingerTight.value(),
                aside.value(),
                tool.value().map(Tool::id),
                Torques.of(torque.value()),
                reading.value(),
                waiting(),
                poweredTest.value(),
                supplies.value(),
                remark.value(),
                old.extras());
    }

    private Optional<Wait> waiting() {
        OptionalInt seconds = waiting.value();
        return seconds.isPresent()
                ? Optional.of(new Wait(seconds.getAsInt(), attendance.value()))
                : Optional.empty();
    }
}
