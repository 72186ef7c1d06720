package counterstep.study;

import counterstep.ledger.FastenerState;
import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.Torque;
import counterstep.testing.SlowLedger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Faults of tools, torques and trays. */
final class Equipment {
    private Equipment() {}

    /** A step or an action names another driver of the list. */
    static Stream<Mutant> otherDriver(Procedure whole) {
        return otherTool(whole, tool -> tool.drive().isPresent());
    }

    /** A step or an action names a tool that turns nothing. */
    static Stream<Mutant> noDriver(Procedure whole) {
        return otherTool(whole, tool -> tool.drive().isEmpty());
    }

    private static Stream<Mutant> otherTool(Procedure whole, Predicate<Tool> wanted) {
        return whole.tools().stream()
                .filter(wanted)
                .flatMap(
                        tool ->
                                Stream.concat(
                                        whole.steps().stream()
                                                .filter(step -> turns(whole, step))
                                                .filter(step -> drives(whole, step.tool()))
                                                .filter(step -> other(step.tool(), tool))
                                                .map(step -> with(whole, step, tool)),
                                        Site.all(whole)
                                                .filter(site -> drives(whole, site.action().tool()))
                                                .filter(site -> other(site.action().tool(), tool))
                                                .map(site -> with(site, tool))));
    }

    /** Whether an action on a fastener takes the step's tool. */
    private static boolean turns(Procedure whole, Step step) {
        return step.actions().stream()
                .filter(action -> action.tool().isEmpty())
                .filter(action -> !action.verb().stateless())
                .flatMap(action -> action.item().stream())
                .anyMatch(item -> whole.item(item) instanceof FastenerSet);
    }

    private static boolean drives(Procedure whole, Optional<ToolId> tool) {
        return tool.filter(id -> drive(whole, id).isPresent()).isPresent();
    }

    private static Optional<Drive> drive(Procedure whole, ToolId id) {
        return whole.tools().stream()
                .filter(tool -> tool.id().equals(id))
                .findFirst()
                .flatMap(Tool::drive);
    }

    private static boolean other(Optional<ToolId> named, Tool tool) {
        return named.filter(id -> !id.equals(tool.id())).isPresent();
    }

    private static Mutant with(Procedure whole, Step step, Tool tool) {
        return new Mutant(
                "%s '%s' with %s".formatted(step.id(), step.title(), tool.name()),
                whole.withStep(step.draft().tool(Optional.of(tool.id())).step()));
    }

    private static Mutant with(Site site, Tool tool) {
        return site.mutant(
                ", with " + tool.name(),
                site.action().draft().tool(Optional.of(tool.id())).action());
    }

    /** A driver is on no list, and no step names it. */
    static Stream<Mutant> notListed(Procedure whole) {
        return whole.tools().stream()
                .filter(tool -> tool.drive().isPresent())
                .map(tool -> new Mutant(tool.name() + " not listed", without(whole, tool.id())));
    }

    private static Procedure without(Procedure whole, ToolId tool) {
        List<Step> steps = whole.steps().stream().map(step -> without(step, tool)).toList();
        List<Tool> tools = whole.tools().stream().filter(one -> !one.id().equals(tool)).toList();
        return whole.draft().steps(steps).tools(tools).procedure();
    }

    private static Step without(Step step, ToolId tool) {
        List<Action> actions =
                step.actions().stream()
                        .map(
                                action ->
                                        action.draft()
                                                .tool(action.tool().filter(t -> !t.equals(tool)))
                                                .action())
                        .toList();
        return step.draft()
                .tool(step.tool().filter(one -> !one.equals(tool)))
                .actions(actions)
                .step();
    }

    static Stream<Mutant> noTorque(Procedure whole) {
        return Site.all(whole)
                .filter(site -> site.action().torque().isPresent())
                .map(
                        site ->
                                site.mutant(
                                        ", no torque",
                                        site.action().draft().torque(Optional.empty()).action()));
    }

    /** The decimal point of one action's torque is one place too far right. */
    static Stream<Mutant> tenfoldTorque(Procedure whole) {
        return torque(whole, 10);
    }

    static Stream<Mutant> halfTorque(Procedure whole) {
        return torque(whole, 0.5);
    }

    private static Stream<Mutant> torque(Procedure whole, double times) {
        return Site.all(whole)
                .flatMap(
                        site ->
                                site.action().torque().stream()
                                        .map(torque -> torque.newtonMetres() * times)
                                        .map(Torque::new)
                                        .map(wrong -> with(site, wrong)));
    }

    private static Mutant with(Site site, Torque wrong) {
        return site.mutant(", " + wrong, site.action().draft().torque(Optional.of(wrong)).action());
    }

    private static Torque tenfold(Torque torque) {
        return new Torque(torque.newtonMetres() * 10);
    }

    /** The same at the set and wherever it is tightened. */
    static Stream<Mutant> tenfoldTorqueOfSet(Procedure whole) {
        return sets(whole)
                .filter(set -> set.torque().isPresent())
                .map(
                        set ->
                                new Mutant(
                                        "'%s' tenfold torque everywhere".formatted(set.name()),
                                        tenfold(whole, set)));
    }

    private static Procedure tenfold(Procedure whole, FastenerSet set) {
        List<Step> steps =
                whole.steps().stream()
                        .map(step -> step.draft().actions(tenfold(step, set)).step())
                        .toList();
        Item wrong = set.withTorque(set.torque().map(Equipment::tenfold));
        return with(whole, wrong).draft().steps(steps).procedure();
    }

    private static List<Action> tenfold(Step step, FastenerSet set) {
        return step.actions().stream()
                .map(
                        action ->
                                action.item().filter(set.id()::equals).isPresent()
                                        ? action.draft()
                                                .torque(action.torque().map(Equipment::tenfold))
                                                .action()
                                        : action)
                .toList();
    }

    private static Stream<FastenerSet> sets(Procedure whole) {
        return whole.items().stream()
                .filter(FastenerSet.class::isInstance)
                .map(FastenerSet.class::cast);
    }

    private static Procedure with(Procedure whole, Item changed) {
        List<Item> items =
                whole.items().stream()
                        .map(item -> item.id().equals(changed.id()) ? changed : item)
                        .toList();
        return whole.draft().items(items).procedure();
    }

    /** Two sets of one drive and thread lie in one tray, and differ in length by 1 mm. */
    static Stream<Mutant> lookAlikes(Procedure whole) {
        return sets(whole)
                .flatMap(one -> sets(whole).flatMap(two -> lookAlike(whole, one, two).stream()));
    }

    private static Optional<Mutant> lookAlike(Procedure whole, FastenerSet one, FastenerSet two) {
        boolean like =
                one.id().compareTo(two.id()) < 0
                        && one.drive().equals(two.drive())
                        && one.thread().equals(two.thread())
                        && one.length().isPresent();
        if (!like) {
            return Optional.empty();
        }
        FastenerSet longer = withLength(two.withTray(one.tray()), one.length().getAsDouble() + 1);
        return Optional.of(
                new Mutant(
                        "'%s' and '%s' in one tray, 1 mm apart".formatted(one.name(), two.name()),
                        with(whole, longer)));
    }

    private static FastenerSet withLength(FastenerSet set, double length) {
        return new FastenerSet(
                set.id(),
                set.name(),
                set.quantity(),
                set.form(),
                set.drive(),
                set.head(),
                set.thread(),
                OptionalDouble.of(length),
                set.propertyClass(),
                set.seat(),
                set.torque(),
                set.tightening(),
                set.locking(),
                set.captive(),
                set.renew(),
                set.tray(),
                set.note(),
                set.extras());
    }

    /** Look-alikes hurt where some of both are on the mat at once in one of the orders. */
    static Judge together(int random) {
        return (base, mutant) -> {
            Procedure changed = mutant.procedure();
            List<FastenerSet> sets =
                    sets(changed).filter(set -> mutant.what().contains(quoted(set))).toList();
            List<List<StepId>> orders =
                    new SomeOrders(changed).orders(random, 1).distinct().toList();
            return orders.stream().anyMatch(order -> meet(changed, order, sets))
                    ? Verdict.hurts("both on the mat at once")
                    : Verdict.harmless("never on the mat at once", orders.size());
        };
    }

    private static String quoted(FastenerSet set) {
        return "'" + set.name() + "'";
    }

    private static boolean meet(Procedure changed, List<StepId> order, List<FastenerSet> sets) {
        List<Step> steps = order.stream().map(changed::step).toList();
        SlowLedger ledger = new SlowLedger(changed.draft().steps(steps).procedure());
        int actions = steps.stream().mapToInt(step -> step.actions().size()).sum();
        return Stream.iterate(0, done -> done <= actions, done -> done + 1)
                .anyMatch(done -> sets.stream().allMatch(set -> out(ledger, set, done)));
    }

    private static boolean out(SlowLedger ledger, FastenerSet set, int done) {
        return ledger.state(set, done) instanceof FastenerState state && state.onMat() > 0;
    }
}
