package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Orders;
import counterstep.testing.RandomProcedure;
import counterstep.testing.SlowOrders;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every verdict and every witness against trying all orders, on 20,000 procedures. */
final class EveryOrderPropertyTest {
    private static final int PROCEDURES_A_BLOCK = 200;
    private static final int MOST_ORDERS = 60;

    static LongStream blocks() {
        return LongStream.range(0, 100);
    }

    @ParameterizedTest
    @MethodSource("blocks")
    void findsWhatTryingEveryOrderFinds(long block) {
        for (int one = 0; one < PROCEDURES_A_BLOCK; one++) {
            long seed = block * PROCEDURES_A_BLOCK + one;
            Procedure procedure = procedure(seed);
            List<List<Step>> orders = Orders.of(procedure, MOST_ORDERS).orElseThrow();
            assertEquals(
                    SlowOrders.failures(procedure, orders), found(procedure), () -> "seed " + seed);
        }
    }

    /** Violations with the size of their witness, each witness shown to fail. */
    private static Map<String, Integer> found(Procedure procedure) {
        Precedence precedence = Precedence.of(procedure);
        EveryOrder every = EveryOrder.of(Deeds.of(Index.of(procedure)), precedence);
        Map<String, Integer> found = new TreeMap<>();
        for (Violation violation : every.violations()) {
            Witness witness = every.witness(violation);
            List<Step> order = whole(procedure, precedence, witness);
            assertTrue(
                    SlowOrders.failures(procedure, List.of(order)).containsKey(name(violation)),
                    () -> violation + " does not fail in " + witness);
            found.put(name(violation), witness.first().size());
        }
        return found;
    }

    private static String name(Violation violation) {
        return violation
                .step()
                .map(
                        step ->
                                "%s %d %s %s"
                                        .formatted(
                                                step,
                                                violation.action(),
                                                violation.kind(),
                                                violation.about()))
                .orElse("end " + violation.about());
    }

    /** The witness, then the failing step, then the rest; the links allow it. */
    private static List<Step> whole(Procedure procedure, Precedence precedence, Witness witness) {
        List<StepId> order = new ArrayList<>(witness.first());
        witness.then().ifPresent(order::add);
        precedence.steps().stream().filter(step -> !order.contains(step)).forEach(order::add);
        for (Link link : procedure.links()) {
            assertTrue(order.indexOf(link.before()) < order.indexOf(link.after()));
        }
        return order.stream().map(procedure::step).toList();
    }

    /** Two to nine steps, with as many links more as it takes to have few orders. */
    private static Procedure procedure(long seed) {
        int steps = 2 + (int) (seed % 8);
        Procedure procedure = RandomProcedure.withSteps(steps, seed);
        Random random = new Random(seed);
        while (Orders.of(procedure, MOST_ORDERS).isEmpty()) {
            int before = random.nextInt(steps - 1);
            int after = before + 1 + random.nextInt(steps - 1 - before);
            procedure = linked(procedure, before, after);
        }
        return procedure;
    }

    private static Procedure linked(Procedure procedure, int before, int after) {
        List<Link> links = new ArrayList<>(procedure.links());
        Link link =
                Link.drawn(procedure.steps().get(before).id(), procedure.steps().get(after).id());
        Optional<Link> same =
                links.stream().filter(old -> old.ends().equals(link.ends())).findFirst();
        if (same.isEmpty()) {
            links.add(link);
        }
        return procedure.draft().links(links).procedure();
    }
}
