package counterstep.ledger;

import counterstep.ledger.Walk.Reached;
import counterstep.links.Precedence;
import java.util.stream.Stream;

/** What a question can meet along a walk. */
final class Starts {
    private final Track track;
    private final Walk walk;
    private final Precedence precedence;
    private final int steps;

    Starts(Track track, Walk walk, Precedence precedence) {
        this.track = track;
        this.walk = walk;
        this.precedence = precedence;
        this.steps = precedence.steps().size();
    }

    /** All that can have been done when the step of the question starts. */
    Stream<Reached> of(Question question) {
        return (question.page() == steps ? walk.ends() : walk.startsOf(question.page(), precedence))
                .stream();
    }

    /** Whether the condition holds when the actions before it in its own step are done too. */
    boolean holds(Question question, Reached start) {
        Tally tally = start.tally();
        if (question.page() < steps) {
            tally = tally.copy();
            track.upTo(question.page(), question.action(), tally);
        }
        return question.demand().sum(tally) >= question.demand().least();
    }
}
