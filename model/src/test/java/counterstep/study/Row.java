package counterstep.study;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What became of all faults of one kind.
 *
 * @param kind the kind
 * @param outcomes one for each fault
 */
record Row(Kind kind, List<Outcome> outcomes) {
    long made() {
        return outcomes.size();
    }

    long found() {
        return count(Outcome::found);
    }

    long byItsCheck() {
        return count(Outcome::byItsCheck);
    }

    long harmless() {
        return count(Outcome::harmless);
    }

    long missed() {
        return count(Outcome::missed);
    }

    long unknowable() {
        return count(Outcome::unknowable);
    }

    /** Those that no check tells although they can hurt. */
    Stream<Outcome> untold() {
        return outcomes.stream().filter(one -> one.missed() || one.unknowable());
    }

    private long count(Predicate<Outcome> wanted) {
        return outcomes.stream().filter(wanted).count();
    }
}
