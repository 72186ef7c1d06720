package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.ActionDraft;
import counterstep.model.Attendance;
import counterstep.model.Extras;
import counterstep.model.GroupRule;
import counterstep.model.Link;
import counterstep.model.OrderRule;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import counterstep.model.Wait;
import counterstep.testing.Networks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Procedures of steps that take hands, wait, and ask for tools and a second person. */
final class Crews {
    private Crews() {}

    /** Steps as 'glue 60 wait 300; lift 5 held', links as 'glue-lift'. */
    static Procedure of(String steps, String links) {
        List<Step> drawn = new ArrayList<>();
        for (String line : steps.split(";")) {
            String[] words = line.strip().split(" ");
            StepDraft step = new StepDraft(Networks.id(words[0]), Phase.SERVICE, words[0]);
            step.seconds(OptionalInt.of(Integer.parseInt(words[1])));
            for (int at = 2; at < words.length; at++) {
                switch (words[at]) {
                    case "wait" -> step.actions(waits(words[at + 1], Attendance.UNATTENDED));
                    case "watched" -> step.actions(waits(words[at + 1], Attendance.WATCHED));
                    case "held" -> step.secondPerson("hold it");
                    default -> {}
                }
            }
            drawn.add(step.step());
        }
        return Procedure.titled("work", "Work")
                .draft()
                .steps(drawn)
                .links(links(links))
                .procedure();
    }

    private static List<Link> links(String links) {
        return links.isBlank()
                ? List.of()
                : Arrays.stream(links.split(" "))
                        .map(link -> link.split("-"))
                        .map(ends -> Link.drawn(Networks.id(ends[0]), Networks.id(ends[1])))
                        .toList();
    }

    private static List<Action> waits(String seconds, Attendance attendance) {
        return List.of(wait(Integer.parseInt(seconds), attendance));
    }

    private static Action wait(int seconds, Attendance attendance) {
        return new ActionDraft(Verb.WAIT, Optional.empty(), 1)
                .waiting(Optional.of(new Wait(seconds, attendance)))
                .action();
    }

    /** The same document in which nothing waits. */
    static Procedure withoutWaits(Procedure procedure) {
        List<Step> steps =
                procedure.steps().stream()
                        .map(
                                step ->
                                        step.draft()
                                                .actions(
                                                        step.actions().stream()
                                                                .map(Crews::atOnce)
                                                                .toList())
                                                .step())
                        .toList();
        return procedure.draft().steps(steps).procedure();
    }

    private static Action atOnce(Action action) {
        return action.draft().waiting(Optional.empty()).action();
    }

    /** Steps by chance, with three tools, some bare hands, waits of both kinds, some held. */
    static Procedure random(int steps, long start) {
        Procedure network = Networks.random(steps, 0.25, start);
        Random random = new Random(start);
        List<Tool> tools = new ArrayList<>();
        for (String name : List.of("driver", "pliers", "spatula")) {
            tools.add(
                    new Tool(
                            new ToolId(name),
                            name,
                            ToolKind.DRIVER,
                            Optional.empty(),
                            true,
                            "",
                            Extras.NONE));
        }
        List<Step> drawn = new ArrayList<>();
        for (Step step : network.steps()) {
            StepDraft draft = step.draft();
            draft.actions(random.nextInt(3) == 0 ? List.of(randomWait(random)) : List.of());
            draft.secondPerson(random.nextInt(4) == 0 ? "hold" : "");
            if (random.nextInt(4) > 0 && draft.step().actions().isEmpty()) {
                draft.tool(Optional.of(tools.get(random.nextInt(tools.size())).id()));
            }
            drawn.add(draft.step());
        }
        return network.draft().tools(tools).steps(drawn).procedure();
    }

    /** The same without waits, phases in order, a group of either kind. */
    static Procedure ruled(int steps, long start) {
        Procedure plain = withoutWaits(random(steps, start));
        Random random = new Random(start);
        List<StepId> order = Precedence.of(plain).topological();
        int second = random.nextInt(steps);
        List<Step> phased = new ArrayList<>();
        for (Step step : plain.steps()) {
            boolean later = order.indexOf(step.id()) >= second;
            Phase phase = later ? Phase.REASSEMBLY : Phase.TEARDOWN;
            phased.add(step.draft().phase(phase).step());
        }
        int first = random.nextInt(steps - 2);
        List<StepId> group = order.subList(first, first + 3);
        GroupRule rule = GroupRule.values()[random.nextInt(2)];
        return plain.draft()
                .steps(phased)
                .groups(List.of(new StepGroup(rule, group, Extras.NONE)))
                .orderRules(List.of(OrderRule.PHASES_IN_ORDER))
                .procedure();
    }

    private static Action randomWait(Random random) {
        return wait(
                random.nextInt(20),
                random.nextBoolean() ? Attendance.WATCHED : Attendance.UNATTENDED);
    }
}
