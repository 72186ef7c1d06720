package counterstep.check.completeness;

import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Remainder;
import counterstep.ledger.Happening;
import counterstep.ledger.Turn;
import counterstep.mirror.DrawCounterstep;
import counterstep.mirror.Recount;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

/** Mends what is not put back: more in the step that puts some of it back, or a counterstep. */
final class DrawIt {
    private DrawIt() {}

    static Stream<Fix> fixes(Facts facts, Finding finding, Remainder remainder) {
        return facts.endings().all(remainder).stream()
                .filter(ending -> told(finding, ending))
                .flatMap(ending -> fixes(facts, ending));
    }

    /** Whether a finding tells that ending. */
    static boolean told(Finding finding, Ending ending) {
        return new HashSet<>(finding.items()).equals(new HashSet<>(ending.items()));
    }

    private static Stream<Fix> fixes(Facts facts, Ending ending) {
        Fix draw = new Fix("Draw it", DrawCounterstep.returning(facts.procedure(), ending.items()));
        return Stream.concat(more(facts, ending), Stream.of(draw));
    }

    /** Puts all back where some of it goes back by now. */
    private static Stream<Fix> more(Facts facts, Ending ending) {
        List<Happening> back =
                facts.ledger().happenings(ending.item()).stream()
                        .filter(happening -> Turn.of(happening.what().verb()) == Turn.BACK)
                        .toList();
        if (back.isEmpty() || !ending.with().isEmpty()) {
            return Stream.empty();
        }
        Happening last = back.get(back.size() - 1);
        int count = last.what().count() + ending.count();
        return count > facts.index().item(ending.item()).quantity()
                ? Stream.empty()
                : Stream.of(setTo(last, count));
    }

    static Fix setTo(Happening happening, int count) {
        Recount recount = new Recount(happening.step(), happening.action(), count);
        return new Fix(recount.name(), recount);
    }
}
