package counterstep.testing;

import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.Drive;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Hazard;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Latch;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import counterstep.model.Setting;
import counterstep.model.SignalWord;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.Tie;
import counterstep.model.TieKind;
import counterstep.model.TitleBlock;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Torque;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A small procedure as a test writes it down: items, then one line of actions a step, such as
 * {@code "remove f1 2; move aside p1"}. Flags after the count: finger-tight, aside, test, wait 60,
 * with t1, torque 0.08.
 */
public final class Sketch {
    private final List<Item> items = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Tool> tools = new ArrayList<>();
    private Phase phase = Phase.TEARDOWN;
    private boolean chained = true;

    private Sketch() {}

    /** An empty sketch. */
    public static Sketch of() {
        return new Sketch();
    }

    /** Any item. */
    public Sketch item(Item item) {
        items.add(item);
        return this;
    }

    /** A tool on the list. */
    public Sketch tool(String id, ToolKind kind, Drive... drive) {
        Optional<Drive> turned = Arrays.stream(drive).findFirst();
        tools.add(new Tool(new ToolId(id), id + " tool", kind, turned, true, "", Extras.NONE));
        return this;
    }

    /** Plain screws without a drive. */
    public Sketch screws(String id, int count) {
        return item(FastenerSet.screws(new ItemId(id), id + " screws", count, Optional.empty()));
    }

    /** Clips. */
    public Sketch clips(String id, int count) {
        return item(new ClipSet(new ItemId(id), id + " clips", count, "", Extras.NONE));
    }

    /** Cable ties. */
    public Sketch ties(String id, int count) {
        return item(
                new Tie(new ItemId(id), id + " ties", count, TieKind.CABLE_TIE, "", Extras.NONE));
    }

    /** Connectors. */
    public Sketch connectors(String id, int count) {
        return item(
                new Connector(
                        new ItemId(id),
                        id + " plugs",
                        count,
                        ConnectorKind.PLUG,
                        Latch.NONE,
                        OptionalInt.empty(),
                        "",
                        Extras.NONE));
    }

    /** An adhesive joint. */
    public Sketch joint(String id) {
        return item(
                new Joint(
                        new ItemId(id),
                        id + " joint",
                        JointKind.ADHESIVE,
                        Optional.empty(),
                        "",
                        "",
                        Extras.NONE));
    }

    /** A setting that belongs to items. */
    public Sketch setting(String id, String... belongsTo) {
        return item(
                new Setting(
                        new ItemId(id),
                        id + " height",
                        "mm",
                        "",
                        "",
                        ids(belongsTo),
                        "",
                        Extras.NONE));
    }

    /** One part: what holds it, tethers it, and what it covers, each a list of ids with blanks. */
    public Sketch part(String id, String heldBy, String tetheredBy, String covers) {
        return item(PartFacts.part(id, 1, heldBy, tetheredBy, covers));
    }

    /** A part alone. */
    public Sketch part(String id) {
        return part(id, "", "", "");
    }

    /** From here on steps are of this phase; teardown to begin with. */
    public Sketch phase(Phase next) {
        phase = next;
        return this;
    }

    /** The next step, s1 to begin with, of 10 seconds. */
    public Sketch step(String line) {
        StepId id = new StepId("s" + (steps.size() + 1));
        List<Action> actions =
                Arrays.stream(line.split(";"))
                        .map(String::strip)
                        .filter(text -> !text.isEmpty())
                        .map(this::action)
                        .toList();
        steps.add(
                new StepDraft(id, phase, line).actions(actions).seconds(OptionalInt.of(10)).step());
        return this;
    }

    /** A complete hazard of the latest step, on items. */
    public Sketch hazardOn(String... items) {
        return hazard("Hazard.", "Consequence.", "Avoidance.", items);
    }

    /** A hazard of the latest step, on items. */
    public Sketch hazard(String hazard, String consequence, String avoidance, String... items) {
        Step last = steps.remove(steps.size() - 1);
        List<Hazard> hazards = new ArrayList<>(last.hazards());
        hazards.add(
                new Hazard(
                        SignalWord.WARNING,
                        hazard,
                        consequence,
                        avoidance,
                        ids(items),
                        Extras.NONE));
        steps.add(last.draft().hazards(hazards).step());
        return this;
    }

    /** Gives the last step a text. */
    public Sketch text(String text) {
        int last = steps.size() - 1;
        steps.set(last, steps.get(last).draft().text(text).step());
        return this;
    }

    /** Several steps. */
    public Sketch steps(String... lines) {
        Arrays.stream(lines).forEach(this::step);
        return this;
    }

    /** A drawn link between steps by number. */
    public Sketch link(int before, int after) {
        links.add(Link.drawn(new StepId("s" + before), new StepId("s" + after)));
        return this;
    }

    /** Leaves the steps unlinked; else those that no link is drawn between are linked as told. */
    public Sketch inAnyOrder() {
        chained = false;
        return this;
    }

    private Action action(String text) {
        Verb verb =
                Stream.of(Verb.values())
                        .filter(one -> (text + " ").startsWith(one.word() + " "))
                        .max(Comparator.comparingInt(one -> one.word().length()))
                        .orElseThrow(() -> new IllegalArgumentException(text));
        List<String> words =
                Stream.of(text.substring(verb.word().length()).strip().split(" "))
                        .filter(word -> !word.isEmpty())
                        .toList();
        Optional<ItemId> item =
                words.isEmpty() || List.of("wait", "test", "with").contains(words.get(0))
                        ? Optional.empty()
                        : Optional.of(new ItemId(words.get(0)));
        Optional<Wait> wait =
                words.contains("wait")
                        ? Optional.of(
                                new Wait(
                                        Integer.parseInt(words.get(words.indexOf("wait") + 1)),
                                        Attendance.UNATTENDED))
                        : Optional.empty();
        return flagged(Action.of(verb, item, count(words, item)), words)
                .draft()
                .waiting(wait)
                .action();
    }

    private int count(List<String> words, Optional<ItemId> item) {
        if (words.size() > 1 && words.get(1).matches("[0-9]+") && item.isPresent()) {
            return Integer.parseInt(words.get(1));
        }
        return items.stream()
                .filter(one -> item.filter(one.id()::equals).isPresent())
                .mapToInt(Item::quantity)
                .findFirst()
                .orElse(1);
    }

    private static Action flagged(Action action, List<String> words) {
        return action.draft()
                .fingerTight(words.contains("finger-tight"))
                .aside(words.contains("aside"))
                .tool(after(words, "with").map(ToolId::new))
                .torque(after(words, "torque").map(Double::valueOf).map(Torque::new))
                .poweredTest(words.contains("test"))
                .action();
    }

    private static Optional<String> after(List<String> words, String flag) {
        int place = words.indexOf(flag);
        return place < 0 ? Optional.empty() : Optional.of(words.get(place + 1));
    }

    private static List<ItemId> ids(String... values) {
        return Arrays.stream(values).map(ItemId::new).toList();
    }

    /** The procedure as sketched; where no link is drawn, each step is linked to the next. */
    public Procedure procedure() {
        Procedure sketched =
                new ProcedureDraft("sketch", TitleBlock.titled("Sketch"))
                        .items(items)
                        .tools(tools)
                        .steps(steps)
                        .links(links)
                        .procedure();
        return chained && links.isEmpty() ? AsTold.linked(sketched) : sketched;
    }
}
