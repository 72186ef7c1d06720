package counterstep.check;

import java.util.stream.Stream;

/** Looks for one fault. Without state: the same facts give the same findings. */
public interface Check {
    /** What it looks for. */
    About about();

    /** A finding for each place where the fault is; none where there is none. */
    Stream<Finding> examine(Facts facts);

    /**
     * Whether it tells of conditions that fail, or of how all ends, when the steps are done in the
     * order of the facts; then it is asked again in other orders that go wrong.
     */
    default boolean dependsOnOrder() {
        return false;
    }

    /**
     * Changes that may mend one of its findings, the best first; they are tried before they are
     * offered, so a candidate need not be sure.
     */
    default Stream<Fix> fixes(Facts facts, Finding finding) {
        return Stream.empty();
    }
}
