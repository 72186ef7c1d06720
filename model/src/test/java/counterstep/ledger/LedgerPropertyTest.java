package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.testing.RandomProcedure;
import counterstep.testing.SlowConditions;
import counterstep.testing.SlowLedger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The ledger against a recount that keeps nothing; a failure names its seed. */
final class LedgerPropertyTest {
    private static final int PROCEDURES = 2_000;

    @Test
    void everyStateIsWhatCountingFromTheFirstActionGives() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure procedure = RandomProcedure.withSteps(8, seed);
            Ledger ledger = Ledger.of(procedure);
            SlowLedger slow = new SlowLedger(procedure);
            int done = 0;
            for (Step step : procedure.steps()) {
                done += step.actions().size();
                for (Item item : procedure.items()) {
                    String where = "seed " + seed + " " + item.id() + " after " + step.id();
                    assertEquals(slow.state(item, done), ledger.after(item.id(), step.id()), where);
                }
            }
        }
    }

    @Test
    void everyConditionFailsWhereAskingThemOneByOneSaysSo() {
        Map<FailureKind, Integer> seen = new HashMap<>();
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure procedure = RandomProcedure.withSteps(8, seed);
            SlowLedger slow = new SlowLedger(procedure);
            List<Happening> happenings = Ledger.of(procedure).happenings();
            for (int place = 0; place < happenings.size(); place++) {
                Set<String> failures = failures(happenings.get(place));
                String where = "seed " + seed + " " + happenings.get(place);
                assertEquals(SlowConditions.failures(slow, place), failures, where);
                happenings
                        .get(place)
                        .failures()
                        .forEach(f -> seen.merge(f.kind(), 1, Integer::sum));
            }
        }
        for (FailureKind kind : FailureKind.values()) {
            assertTrue(seen.getOrDefault(kind, 0) > 40, () -> "too seldom: " + seen);
        }
    }

    private static Set<String> failures(Happening happening) {
        return happening.failures().stream()
                .map(failure -> failure.kind() + " " + failure.about())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
