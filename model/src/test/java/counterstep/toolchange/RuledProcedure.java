package counterstep.toolchange;

import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.GroupRule;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.OrderRule;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Seat;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;

/** Small procedures that ask something of their order, and all orders that give it. */
final class RuledProcedure {
    private RuledProcedure() {}

    static Procedure random(long seed) {
        Random random = new Random(seed);
        int size = 2 + random.nextInt(5);
        Procedure bare = empty(random.nextInt(4) == 0 ? "" : "crosswise");
        List<Step> steps = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        Phase phase = Phase.TEARDOWN;
        for (int at = 0; at < size; at++) {
            phase = random.nextInt(3) == 0 ? Phase.values()[1 + random.nextInt(3)] : phase;
            Step step = step(bare, at, phase, random.nextInt(4));
            steps.add(random.nextBoolean() ? step : acting(step, random));
            for (int one = 0; one < at; one++) {
                if (random.nextInt(6) == 0) {
                    links.add(Link.drawn(id(one), id(at)));
                }
            }
        }
        return bare.draft()
                .steps(steps)
                .links(links)
                .groups(groups(size, random))
                .orderRules(
                        IntStream.range(0, 2)
                                .filter(rule -> random.nextBoolean())
                                .mapToObj(rule -> OrderRule.values()[rule])
                                .toList())
                .procedure();
    }

    private static List<StepGroup> groups(int size, Random random) {
        List<StepGroup> groups = new ArrayList<>();
        for (int count = random.nextInt(3); count > 0; count--) {
            List<StepId> steps =
                    random.ints(0, size)
                            .distinct()
                            .limit(2 + random.nextInt(Math.min(2, size - 1)))
                            .mapToObj(RuledProcedure::id)
                            .toList();
            groups.add(new StepGroup(GroupRule.values()[random.nextInt(2)], steps, Extras.NONE));
        }
        return groups;
    }

    private static Step acting(Step step, Random random) {
        Verb verb = List.of(Verb.REMOVE, Verb.REINSTALL, Verb.TIGHTEN).get(random.nextInt(3));
        Action action =
                Action.of(verb, new ItemId("f1"), 1)
                        .draft()
                        .fingerTight(verb == Verb.REINSTALL && random.nextBoolean())
                        .action();
        return step.draft().actions(List.of(action)).step();
    }

    /** Three drivers and one set of screws that all steps can act on. */
    static Procedure empty(String tightening) {
        FastenerSet plain =
                FastenerSet.screws(
                        new ItemId("f1"),
                        "screws",
                        4,
                        Optional.of(new Drive(DriveKind.HEXALOBULAR, "1")));
        FastenerSet screws =
                new FastenerSet(
                        plain.id(),
                        plain.name(),
                        plain.quantity(),
                        plain.form(),
                        plain.drive(),
                        Head.PAN,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        "",
                        Seat.UNKNOWN,
                        Optional.empty(),
                        tightening,
                        "",
                        false,
                        false,
                        "",
                        "",
                        Extras.NONE);
        return Procedure.titled("ruled", "Ruled")
                .draft()
                .tools(IntStream.rangeClosed(1, 3).mapToObj(RuledProcedure::driver).toList())
                .items(List.of(screws))
                .procedure();
    }

    /** A step with the tool of that number; bare hands with 0. */
    static Step step(Procedure bare, int at, Phase phase, int tool) {
        Optional<ToolId> held =
                tool == 0 ? Optional.empty() : Optional.of(bare.tools().get(tool - 1).id());
        return Step.titled(id(at), phase, "step " + at).draft().tool(held).step();
    }

    static StepId id(int at) {
        return new StepId("s" + (at + 1));
    }

    private static Tool driver(int size) {
        return new Tool(
                new ToolId("t" + size),
                "driver T" + size,
                ToolKind.DRIVER,
                Optional.of(new Drive(DriveKind.HEXALOBULAR, String.valueOf(size))),
                true,
                "",
                Extras.NONE);
    }

    /** Every order of the steps, tried against what is asked word for word. */
    static List<List<StepId>> allOrders(Procedure procedure) {
        List<List<StepId>> orders = new ArrayList<>();
        grow(procedure, Precedence.of(procedure), new ArrayList<>(), orders);
        return orders;
    }

    private static void grow(
            Procedure procedure,
            Precedence precedence,
            List<StepId> begun,
            List<List<StepId>> orders) {
        if (begun.size() == procedure.steps().size() && keepsAll(procedure, precedence, begun)) {
            orders.add(List.copyOf(begun));
        }
        for (Step step : procedure.steps()) {
            if (!begun.contains(step.id())) {
                begun.add(step.id());
                grow(procedure, precedence, begun, orders);
                begun.remove(begun.size() - 1);
            }
        }
    }

    private static boolean keepsAll(
            Procedure procedure, Precedence precedence, List<StepId> order) {
        boolean phased = procedure.orderRules().contains(OrderRule.PHASES_IN_ORDER);
        for (int later = 0; later < order.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                Step first = procedure.step(order.get(earlier));
                Step then = procedure.step(order.get(later));
                if (precedence.before(then.id(), first.id())
                        || phased && first.phase().ordinal() > then.phase().ordinal()) {
                    return false;
                }
            }
        }
        boolean whole = procedure.orderRules().contains(OrderRule.PATTERNS_WHOLE);
        return procedure.groups().stream().allMatch(group -> keeps(group, order))
                && (!whole
                        || PatternRuns.in(procedure).stream().allMatch(run -> gapless(run, order)));
    }

    private static boolean keeps(StepGroup group, List<StepId> order) {
        if (group.rule() == GroupRule.TOGETHER) {
            return gapless(group.steps(), order);
        }
        int first = order.indexOf(group.steps().get(0));
        int end = first + group.steps().size();
        return end <= order.size() && order.subList(first, end).equals(group.steps());
    }

    private static boolean gapless(List<StepId> steps, List<StepId> order) {
        for (int first = 0; first + steps.size() <= order.size(); first++) {
            if (order.subList(first, first + steps.size()).containsAll(steps)) {
                return true;
            }
        }
        return false;
    }
}
