package counterstep.toolchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.ReorderPage;
import counterstep.links.Precedence;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.GroupRule;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class FewestToolChangesTest {
    static LongStream seeds() {
        return LongStream.range(0, 400);
    }

    static List<String> samples() {
        return Samples.names();
    }

    /** Steps of one tool each or of bare hands, some links, here and there a group. */
    private static Procedure random(long seed) {
        Random random = new Random(seed);
        int size = 2 + random.nextInt(5);
        List<Tool> tools =
                IntStream.rangeClosed(1, 3).mapToObj(FewestToolChangesTest::driver).toList();
        List<Step> steps = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int at = 0; at < size; at++) {
            Optional<ToolId> tool =
                    random.nextInt(5) == 0
                            ? Optional.empty()
                            : Optional.of(tools.get(random.nextInt(3)).id());
            steps.add(Step.titled(id(at), Phase.TEARDOWN, "step " + at).draft().tool(tool).step());
            for (int one = 0; one < at; one++) {
                if (random.nextInt(4) == 0) {
                    links.add(Link.drawn(id(one), id(at)));
                }
            }
        }
        List<StepGroup> groups = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            int first = random.nextInt(size - 1);
            GroupRule rule = GroupRule.values()[random.nextInt(2)];
            groups.add(new StepGroup(rule, List.of(id(first), id(first + 1)), Extras.NONE));
        }
        return Procedure.titled("random", "Random")
                .draft()
                .tools(tools)
                .steps(steps)
                .links(links)
                .groups(groups)
                .procedure();
    }

    private static StepId id(int at) {
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

    private static FewestToolChanges fewest(Procedure procedure) {
        return find(procedure).orElseThrow();
    }

    private static Optional<FewestToolChanges> find(Procedure procedure) {
        return FewestToolChanges.of(
                procedure, Precedence.of(procedure), Tooling.of(procedure), () -> false);
    }

    /** All orders that keep links and groups, in the order of the page: nearest first. */
    private static List<List<StepId>> allOrders(Procedure procedure) {
        List<List<StepId>> orders = new ArrayList<>();
        grow(procedure, Precedence.of(procedure), new ArrayList<>(), orders);
        return orders.stream().filter(order -> keepsGroups(procedure, order)).toList();
    }

    private static void grow(
            Procedure procedure,
            Precedence precedence,
            List<StepId> begun,
            List<List<StepId>> orders) {
        if (begun.size() == procedure.steps().size()) {
            orders.add(List.copyOf(begun));
        }
        for (Step step : procedure.steps()) {
            boolean allowed =
                    !begun.contains(step.id())
                            && procedure.steps().stream()
                                    .filter(other -> precedence.before(other.id(), step.id()))
                                    .allMatch(other -> begun.contains(other.id()));
            if (allowed) {
                begun.add(step.id());
                grow(procedure, precedence, begun, orders);
                begun.remove(begun.size() - 1);
            }
        }
    }

    private static boolean keepsGroups(Procedure procedure, List<StepId> order) {
        for (StepGroup group : procedure.groups()) {
            List<Integer> at = new ArrayList<>();
            group.steps().forEach(step -> at.add(order.indexOf(step)));
            boolean together =
                    Collections.max(at) - Collections.min(at) == group.steps().size() - 1;
            boolean inOrder = at.equals(at.stream().sorted().toList());
            if (!together || group.rule() == GroupRule.RIGHT_AFTER && !inOrder) {
                return false;
            }
        }
        return true;
    }

    private static int changes(Procedure procedure, List<StepId> order) {
        return ToolChanges.inPageOrder(new ReorderPage(order, "").apply(procedure)).count();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noOrderThatKeepsLinksAndGroupsHasFewer(long seed) {
        Procedure procedure = random(seed);
        List<List<StepId>> orders = allOrders(procedure);
        Optional<FewestToolChanges> found = find(procedure);
        assertEquals(orders.isEmpty(), found.isEmpty(), "a group that the links tear apart");
        if (found.isPresent()) {
            int least =
                    orders.stream().mapToInt(order -> changes(procedure, order)).min().orElse(0);
            assertTrue(orders.contains(found.get().order()), "an order that is allowed");
            assertTrue(found.get().proved());
            assertEquals(least, found.get().count());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ofTheBestOrdersTheOneThatFollowsThePageLongestIsChosen(long seed) {
        Procedure procedure = random(seed).draft().groups(List.of()).procedure();
        FewestToolChanges found = fewest(procedure);
        List<StepId> nearest =
                allOrders(procedure).stream()
                        .filter(order -> changes(procedure, order) == found.count())
                        .findFirst()
                        .orElseThrow();
        assertEquals(nearest, found.nearestToPage(() -> false));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aSampleHasAProvedOrderThatIsAsCompleteAsThePage(String name) {
        Procedure sample = ProcedureFile.read(Samples.file(name));
        FewestToolChanges found = fewest(sample);
        assertTrue(found.proved());
        assertTrue(found.count() <= ToolChanges.inPageOrder(sample).count());
        Procedure reordered =
                new ReorderPage(found.nearestToPage(() -> false), "Reorder").apply(sample);
        assertEquals(found.count(), ToolChanges.inPageOrder(reordered).count());
        assertEquals(List.of(), Precedence.of(reordered).againstPageOrder());
        assertEquals(
                Review.of(sample).findings().size(),
                Review.of(reordered).findings().size(),
                "what is complete in every order is complete in this one");
    }

    @Test
    void aLoopHasNoOrder() {
        Procedure looped =
                random(0)
                        .draft()
                        .groups(List.of())
                        .links(List.of(Link.drawn(id(0), id(1)), Link.drawn(id(1), id(0))))
                        .procedure();
        assertEquals(Optional.empty(), find(looped));
    }
}
