package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Bench;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PageOrderBreaksALinkTest {
    @Test
    void aStepBeforeTheOneItNeedsIsFound() {
        assertEquals(
                List.of("page-order-breaks-a-link s1"),
                Bench.found("prepare: check", "verify: check", "link s2 s1"));
    }

    @Test
    void inOrderIsClean() {
        assertEquals(List.of(), Bench.found("prepare: check", "verify: check", "link s1 s2"));
    }
}
