package counterstep.study;

import counterstep.model.Procedure;
import java.util.Arrays;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A kind of fault: one row of the table.
 *
 * @param name what the writer did wrong
 * @param tellers ids of the checks that ought to tell it
 * @param judge says, without the checks, whether such a fault can hurt
 * @param faults every single fault of this kind in a complete procedure
 * @param whyMissed why no check tells those that are missed; empty where none may be
 */
record Kind(
        String name,
        Set<String> tellers,
        Judge judge,
        Function<Procedure, Stream<Mutant>> faults,
        String whyMissed) {
    /** A kind of which none may be missed. */
    static Kind of(
            String name,
            Judge judge,
            Function<Procedure, Stream<Mutant>> faults,
            String... tellers) {
        return new Kind(name, Set.copyOf(Arrays.asList(tellers)), judge, faults, "");
    }

    /** The same with the reason why some are missed. */
    Kind missedWhere(String reason) {
        return new Kind(name, tellers, judge, faults, reason);
    }
}
