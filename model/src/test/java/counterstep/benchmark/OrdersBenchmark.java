package counterstep.benchmark;

import counterstep.ledger.Deeds;
import counterstep.ledger.EveryOrder;
import counterstep.ledger.Ledger;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Orders;
import counterstep.testing.RandomProcedure;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The every-order check beside its peer, trying all orders, on twenty procedures of 7 steps. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OrdersBenchmark {
    private static final int MOST = 10_000;

    private final List<Procedure> small =
            LongStream.range(0, 20).mapToObj(seed -> RandomProcedure.withSteps(7, seed)).toList();

    /** By cuts and walks. */
    @Benchmark
    public int everyOrder() {
        return small.stream()
                .mapToInt(
                        one ->
                                EveryOrder.of(Deeds.of(Index.of(one)), Precedence.of(one))
                                        .violations()
                                        .size())
                .sum();
    }

    /** By replaying each order. */
    @Benchmark
    public int eachOrderReplayed() {
        return small.stream().mapToInt(OrdersBenchmark::replayed).sum();
    }

    private static int replayed(Procedure procedure) {
        Deeds deeds = Deeds.of(Index.of(procedure));
        int actions = 0;
        for (List<Step> order : Orders.of(procedure, MOST).orElseThrow()) {
            List<StepId> ids = order.stream().map(Step::id).toList();
            actions += Ledger.of(deeds, ids).happenings().size();
        }
        return actions;
    }
}
