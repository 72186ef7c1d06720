package counterstep.implied;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Finding;
import counterstep.ledger.Happening;
import counterstep.ledger.ItemState;
import counterstep.ledger.Ledger;
import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import counterstep.testing.RandomProcedure;
import counterstep.testing.RandomTeardown;
import counterstep.testing.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where page order is clean, so is every order that keeps the accepted links. */
final class ImpliedLinksPropertyTest {
    private static final int PROCEDURES = 1_500;
    private static final int ORDERS = 12;

    @Test
    void noOrderOfATeardownAndItsMirrorFails() {
        for (long seed = 0; seed < PROCEDURES / 10; seed++) {
            Procedure procedure = teardown(1 + (int) (seed % 5), seed);
            assertEveryOrderIsClean(accepted(procedure), seed);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.HURRIED, Samples.SUPPLY_FAN})
    void noErrorOfASampleIsLeftInOtherOrdersOnly(String name) {
        Procedure sample = ProcedureFile.read(Samples.file(name));
        Procedure bare = unlinked(sample);
        assertTrue(inOtherOrders(bare).size() > 5);
        assertEquals(List.of(), inOtherOrders(accepted(bare)));
    }

    @Test
    void noErrorOfARandomTeardownIsLeftInOtherOrdersOnly() {
        for (long seed = 0; seed < PROCEDURES / 20; seed++) {
            Procedure procedure = teardown(1 + (int) (seed % 5), seed);
            assertEquals(List.of(), inOtherOrders(accepted(procedure)), "seed " + seed);
        }
    }

    @Test
    void noErrorOfAnyProcedureIsLeftInOtherOrdersOnceWhatFailsOnThePageIsGone() {
        for (long seed = 0; seed < PROCEDURES / 10; seed++) {
            int steps = 2 + (int) (seed % 14);
            Procedure procedure = withoutFailures(RandomProcedure.withSteps(steps, seed));
            assertEquals(List.of(), inOtherOrders(accepted(procedure)), "seed " + seed);
        }
    }

    /** Errors only: a strap on in time is asked by the work, not by facts on items. */
    private static List<Finding> inOtherOrders(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .filter(finding -> finding.witness().isPresent())
                .filter(finding -> finding.severity() == Severity.ERROR)
                .toList();
    }

    @Test
    void eachProposalOfATeardownIsNeeded() {
        for (long seed = 0; seed < PROCEDURES / 10; seed++) {
            Procedure procedure = teardown(1 + (int) (seed % 4), seed);
            List<ImpliedLink> proposals = ImpliedLinks.of(procedure).proposals();
            assertTrue(proposals.size() > 3, "seed " + seed);
            for (ImpliedLink proposal : proposals) {
                Procedure turned = turned(procedure, proposal, proposals);
                assertTrue(failing(turned).isPresent(), () -> proposal + " is not needed");
            }
        }
    }

    /** Taken apart and put together, without links. */
    private static Procedure teardown(int covers, long seed) {
        return unlinked(RandomTeardown.of(covers, seed).procedure());
    }

    private static Procedure unlinked(Procedure procedure) {
        return procedure.draft().links(List.of()).procedure();
    }

    /** In an order that keeps all proposals but one, and breaks that. */
    private static Procedure turned(
            Procedure procedure, ImpliedLink one, List<ImpliedLink> proposals) {
        List<Link> links = new ArrayList<>();
        links.add(Link.drawn(one.ends().after(), one.ends().before()));
        proposals.stream()
                .filter(other -> !other.equals(one))
                .forEach(other -> links.add(other.accepted()));
        Precedence precedence = Precedence.of(procedure.draft().links(links).procedure());
        return procedure
                .draft()
                .steps(precedence.topological().stream().map(procedure::step).toList())
                .procedure();
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.SUPPLY_FAN})
    void noOrderOfASampleHasAnErrorWhenTheImpliedLinksStandForTheDrawnOnes(String name) {
        Procedure sample = ProcedureFile.read(Samples.file(name));
        Procedure procedure = accepted(unlinked(sample));
        assertEveryOrderIsClean(procedure, 1);
        Precedence precedence = Precedence.of(procedure);
        Random random = new Random(1);
        for (int order = 0; order < ORDERS; order++) {
            Review review = Review.of(inAnyOrder(procedure, precedence, random));
            assertEquals(0, review.count(Severity.ERROR), () -> review.findings().toString());
        }
    }

    @Test
    void noOrderOfAnyProcedureFailsOnceWhatFailsOnThePageIsGone() {
        int actions = 0;
        for (long seed = 0; seed < PROCEDURES; seed++) {
            int steps = 2 + (int) (seed % 14);
            Procedure procedure = withoutFailures(RandomProcedure.withSteps(steps, seed));
            actions += procedure.steps().stream().mapToInt(step -> step.actions().size()).sum();
            assertEveryOrderIsClean(accepted(procedure), seed);
        }
        assertTrue(actions > 3 * PROCEDURES, actions + " actions left");
    }

    /** The document without links, and without each action that fails on the page. */
    private static Procedure withoutFailures(Procedure whole) {
        Procedure procedure = unlinked(whole);
        Optional<Happening> failing = failing(procedure);
        while (failing.isPresent()) {
            Step step = procedure.step(failing.get().step());
            List<Action> actions = new ArrayList<>(step.actions());
            actions.remove(failing.get().action());
            procedure = procedure.withStep(step.draft().actions(actions).step());
            failing = failing(procedure);
        }
        return procedure;
    }

    private static Optional<Happening> failing(Procedure procedure) {
        return Ledger.of(procedure).happenings().stream()
                .filter(happening -> !happening.failures().isEmpty())
                .findFirst();
    }

    private static Procedure accepted(Procedure procedure) {
        ImpliedLinks implied = ImpliedLinks.of(procedure);
        assertEquals(List.of(), implied.contradicted());
        List<Link> links = new ArrayList<>(procedure.links());
        implied.proposals().forEach(proposal -> links.add(proposal.accepted()));
        return procedure.draft().links(links).procedure();
    }

    private static void assertEveryOrderIsClean(Procedure procedure, long seed) {
        Precedence precedence = Precedence.of(procedure);
        assertEquals(List.of(), precedence.againstPageOrder());
        assertEquals(precedence.steps(), precedence.topological());
        Map<Item, ItemState> end = end(procedure);
        Random random = new Random(seed);
        for (int order = 0; order < ORDERS; order++) {
            Procedure other = inAnyOrder(procedure, precedence, random);
            assertEquals(
                    Optional.empty(),
                    failing(other),
                    () -> "seed " + seed + " as " + titles(other) + " of " + titles(procedure));
            assertEquals(end, end(other), () -> "seed " + seed + " as " + titles(other));
        }
    }

    private static List<String> titles(Procedure procedure) {
        return procedure.steps().stream()
                .map(
                        step ->
                                step.id()
                                        + " "
                                        + step.actions().stream()
                                                .map(ImpliedLinksPropertyTest::words)
                                                .toList())
                .toList();
    }

    private static String words(Action action) {
        String item = action.item().map(Object::toString).orElse("");
        return action.verb().word() + " " + item + " " + action.count();
    }

    /** Without sources: whether a proof still counts is asked by work, not by the end. */
    private static Map<Item, ItemState> end(Procedure procedure) {
        Ledger ledger = Ledger.of(procedure);
        return procedure.items().stream()
                .filter(item -> !(item instanceof EnergySource))
                .collect(Collectors.toMap(Function.identity(), item -> ledger.atEnd(item.id())));
    }

    private static Procedure inAnyOrder(Procedure procedure, Precedence precedence, Random random) {
        List<StepId> left = new ArrayList<>(precedence.steps());
        List<Step> order = new ArrayList<>();
        while (!left.isEmpty()) {
            List<StepId> allowed =
                    left.stream()
                            .filter(
                                    step ->
                                            left.stream()
                                                    .noneMatch(
                                                            other ->
                                                                    precedence.before(other, step)))
                            .toList();
            StepId next = allowed.get(random.nextInt(allowed.size()));
            left.remove(next);
            order.add(procedure.step(next));
        }
        return procedure.draft().steps(order).procedure();
    }
}
