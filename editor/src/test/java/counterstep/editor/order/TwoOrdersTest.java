package counterstep.editor.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.ReorderPage;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.review.OrderProposal;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import counterstep.toolchange.ToolRun;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TwoOrdersTest {
    private static List<StepId> steps(int size) {
        return IntStream.range(0, size).mapToObj(at -> new StepId("s" + at)).toList();
    }

    /** The size of a largest set that is in order, over all sets. */
    private static int mostInOrder(List<StepId> page, List<StepId> other) {
        return IntStream.range(0, 1 << other.size())
                .filter(set -> rises(set, page, other))
                .map(Integer::bitCount)
                .max()
                .orElse(0);
    }

    private static boolean rises(int set, List<StepId> page, List<StepId> other) {
        int[] places =
                IntStream.range(0, other.size())
                        .filter(at -> (set >> at & 1) == 1)
                        .map(at -> page.indexOf(other.get(at)))
                        .toArray();
        return IntStream.range(1, places.length).allMatch(at -> places[at - 1] < places[at]);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 5, 8, 9})
    void asFewStepsAsCanBeAreSaidToMoveAndTheOthersStayInOrder(int size) {
        List<StepId> page = steps(size);
        for (int seed = 0; seed < 30; seed++) {
            List<StepId> other = new ArrayList<>(page);
            Collections.shuffle(other, new Random(seed));
            Set<StepId> moved = MovedSteps.between(page, other);
            assertEquals(size - mostInOrder(page, other), moved.size());
            List<StepId> stay = new ArrayList<>(page);
            stay.removeAll(moved);
            other.removeAll(moved);
            assertEquals(stay, other);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {Samples.STICK_UNIT, Samples.SUPPLY_FAN})
    void theRibbonsHaveAPieceForEachPickUpWithoutAGap(String sample) {
        Procedure before = ProcedureFile.read(Samples.file(sample));
        OrderProposal proposal = OrderProposal.of(before, () -> false).orElseThrow();
        ReorderPage edit = proposal.edit();
        TwoOrders orders = TwoOrders.of(before, edit.apply(before));
        assertEquals(proposal.now(), orders.pageRuns().size());
        assertEquals(proposal.fewest().count(), orders.otherRuns().size());
        for (List<ToolRun> runs : List.of(orders.pageRuns(), orders.otherRuns())) {
            for (int at = 1; at < runs.size(); at++) {
                assertEquals(runs.get(at - 1).to(), runs.get(at).from());
                assertTrue(runs.get(at).number() != runs.get(at - 1).number());
            }
            assertEquals(before.steps().size(), runs.get(runs.size() - 1).to());
        }
    }
}
