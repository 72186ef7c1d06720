package counterstep.toolchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.DissolveGroups;
import counterstep.edit.KeepInCompany;
import counterstep.edit.ReorderPage;
import counterstep.edit.SetOrderRule;
import counterstep.links.Company;
import counterstep.links.OrderDemands;
import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.GroupRule;
import counterstep.model.OrderRule;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Groups that share steps, phases in order, patterns whole: against the list of all orders. */
final class OrderRulesTest {
    static LongStream seeds() {
        return LongStream.range(0, 500);
    }

    private static Optional<FewestToolChanges> find(Procedure procedure) {
        return FewestToolChanges.of(
                procedure, Precedence.of(procedure), Tooling.of(procedure), () -> false);
    }

    private static int changes(Procedure procedure, List<StepId> order) {
        return ToolChanges.inPageOrder(new ReorderPage(order, "").apply(procedure)).count();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noOrderThatKeepsAllThatIsAskedHasFewerAndThatIsProved(long seed) {
        Procedure procedure = RuledProcedure.random(seed);
        List<List<StepId>> allowed = RuledProcedure.allOrders(procedure);
        Optional<FewestToolChanges> found = find(procedure);
        assertEquals(allowed.isEmpty(), found.isEmpty(), "what is asked tears an order apart");
        if (found.isPresent()) {
            int least =
                    allowed.stream().mapToInt(order -> changes(procedure, order)).min().orElse(-1);
            assertEquals(least, found.get().count());
            assertTrue(found.get().proved());
            assertTrue(allowed.contains(found.get().order()));
            List<StepId> nearest = found.get().nearestToPage(() -> false);
            assertTrue(allowed.contains(nearest));
            assertEquals(least, changes(procedure, nearest));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatAnOrderKeepsIsToldOfAnyOrder(long seed) {
        Procedure procedure = RuledProcedure.random(seed);
        OrderDemands demands = OrderDemands.of(procedure, Precedence.of(procedure));
        List<List<StepId>> allowed = RuledProcedure.allOrders(procedure);
        Procedure free = procedure.draft().groups(List.of()).orderRules(List.of()).procedure();
        for (List<StepId> order : RuledProcedure.allOrders(free)) {
            assertEquals(allowed.contains(order), demands.keptIn(order), order.toString());
        }
    }

    /** Tightened in two steps, T5 then T6 between them: fewest 3 whole, 2 parted. */
    private static Procedure parted() {
        Procedure bare = RuledProcedure.empty("crosswise");
        Step first = RuledProcedure.step(bare, 0, Phase.REASSEMBLY, 1);
        Step other = RuledProcedure.step(bare, 1, Phase.REASSEMBLY, 2);
        Step second = RuledProcedure.step(bare, 2, Phase.REASSEMBLY, 2);
        Action tighten = Action.of(Verb.TIGHTEN, bare.items().get(0).id(), 2);
        return bare.draft()
                .steps(
                        List.of(
                                first.draft().actions(List.of(tighten)).step(),
                                other,
                                second.draft().actions(List.of(tighten)).step()))
                .procedure();
    }

    @Test
    void aPatternIsTheStepsThatTightenOneSetUnlessTheyOnlySeatIt() {
        Procedure whole = new SetOrderRule(OrderRule.PATTERNS_WHOLE, true).apply(parted());
        OrderDemands demands = OrderDemands.of(whole, Precedence.of(whole));
        Company company = demands.companies().get(0);
        assertEquals(Company.Reason.PATTERN, company.reason());
        assertEquals(List.of(RuledProcedure.id(0), RuledProcedure.id(2)), company.steps());
        assertEquals(Optional.of(whole.items().get(0).id()), company.item());
        Step first = whole.steps().get(0);
        Action seated =
                Action.of(Verb.REINSTALL, whole.items().get(0).id(), 2)
                        .draft()
                        .fingerTight(true)
                        .action();
        Procedure loose = whole.withStep(first.draft().actions(List.of(seated)).step());
        assertEquals(List.of(), OrderDemands.of(loose, Precedence.of(loose)).companies());
    }

    @Test
    void stepsAreKeptInCompanyAndLeaveTheGroupTheyWereIn() {
        Procedure before = parted();
        StepId one = RuledProcedure.id(0);
        StepId two = RuledProcedure.id(1);
        StepId three = RuledProcedure.id(2);
        Procedure together =
                new KeepInCompany(GroupRule.TOGETHER, Set.of(three, one)).apply(before);
        assertEquals(List.of(one, three), together.groups().get(0).steps());
        Procedure after =
                new KeepInCompany(GroupRule.RIGHT_AFTER, Set.of(two, three)).apply(together);
        assertEquals(1, after.groups().size());
        assertEquals(GroupRule.RIGHT_AFTER, after.groups().get(0).rule());
        assertEquals(List.of(two, three), after.groups().get(0).steps());
        assertEquals(before, new DissolveGroups(Set.of(two)).apply(after));
        assertEquals(after, new DissolveGroups(Set.of(one)).apply(after));
    }
}
