package counterstep.benchmark;

import counterstep.check.Facts;
import counterstep.edit.RenameStep;
import counterstep.ledger.Deeds;
import counterstep.ledger.EveryOrder;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.review.Review;
import counterstep.testing.BigProcedure;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All checks after one edit on 500 steps, and the every-order check alone on 2000. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ChecksBenchmark {
    private final Procedure large = BigProcedure.withUnits(50);
    private final Procedure huge = BigProcedure.withUnits(200);
    private final Deeds deeds = Deeds.of(Index.of(huge));
    private final Precedence precedence = Precedence.of(huge);
    private int edits;

    /** Rename a step, then everything that the findings panel shows. */
    @Benchmark
    public Review allChecksAfterAnEdit() {
        Procedure edited = new RenameStep(new StepId("s250"), "edit " + edits++).apply(large);
        return Review.of(Facts.of(edited));
    }

    /** All conditions in every order, the links known. */
    @Benchmark
    public EveryOrder everyOrder() {
        return EveryOrder.of(deeds, precedence);
    }

    /** What the links allow, which the above stands on. */
    @Benchmark
    public Precedence links() {
        return Precedence.of(huge);
    }
}
