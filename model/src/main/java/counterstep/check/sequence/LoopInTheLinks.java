package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.DeleteLinks;
import counterstep.model.LinkEnds;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Steps that wait for each other in a ring can be done in no order. */
final class LoopInTheLinks implements Check {
    @Override
    public About about() {
        return new About(
                "loop-in-the-links", Severity.ERROR, "Steps wait for each other in a ring.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.precedence().loop().stream().map(loop -> finding(facts, loop));
    }

    /** Without one of its links the ring is open; that against page order is the likely one. */
    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        List<StepId> loop = finding.steps();
        return IntStream.range(0, loop.size())
                .mapToObj(at -> new LinkEnds(loop.get(at), loop.get((at + 1) % loop.size())))
                .sorted(Comparator.comparing(ends -> followsThePage(facts, ends)))
                .map(ends -> fix(facts, ends));
    }

    private static boolean followsThePage(Facts facts, LinkEnds ends) {
        return facts.index().page(ends.before()) < facts.index().page(ends.after());
    }

    private static Fix fix(Facts facts, LinkEnds ends) {
        String name =
                "Drop link %d → %d"
                        .formatted(
                                facts.index().number(ends.before()),
                                facts.index().number(ends.after()));
        return new Fix(name, new DeleteLinks(Set.of(ends)));
    }

    private Finding finding(Facts facts, List<StepId> loop) {
        List<String> numbers =
                loop.stream().map(step -> String.valueOf(facts.index().number(step))).toList();
        String message =
                "The links lead in a ring, "
                        + String.join(" → ", numbers)
                        + " → "
                        + numbers.get(0)
                        + ": no order of the steps can keep them.";
        return about().finding(message, loop, List.of());
    }
}
