package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LoopInTheLinksTest {
    @Test
    void twoStepsThatWaitForEachOtherAreFound() {
        assertEquals(
                List.of("loop-in-the-links s1"),
                Bench.found("prepare: check", "verify: check", "link s1 s2", "link s2 s1"));
    }

    @Test
    void aChainIsClean() {
        assertEquals(List.of(), Bench.found("prepare: check", "verify: check", "link s1 s2"));
    }
}
