package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.ledger.Happening;
import counterstep.model.Phase;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.stream.Stream;

/** Whether the device works again is known only when somebody tries it, closed. */
final class NotTriedAtTheEnd implements Check {
    @Override
    public About about() {
        return new About(
                "not-tried-at-the-end",
                Severity.DOUBT,
                "Nobody checks the device after the last step of reassembly.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<Happening> happenings = facts.ledger().happenings();
        int last = -1;
        for (int place = 0; place < happenings.size(); place++) {
            Happening happening = happenings.get(place);
            boolean reassembly = facts.index().step(happening.step()).phase() == Phase.REASSEMBLY;
            if (reassembly && !happening.what().verb().stateless()) {
                last = place;
            }
        }
        if (last < 0) {
            return Stream.empty();
        }
        boolean tried =
                happenings.subList(last, happenings.size()).stream()
                        .anyMatch(happening -> happening.what().verb() == Verb.CHECK);
        return tried ? Stream.empty() : Stream.of(finding(facts, happenings.get(last).step()));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        ClosingTest test = new ClosingTest();
        return Stream.of(new Fix(test.name(), test));
    }

    private Finding finding(Facts facts, StepId last) {
        String message =
                "Nobody checks the device after "
                        + facts.phrases().step(last)
                        + ", the last of reassembly.";
        return about().finding(message, List.of(last), List.of());
    }
}
