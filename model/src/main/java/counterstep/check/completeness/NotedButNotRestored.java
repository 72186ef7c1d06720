package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Ending;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.check.Remainder;
import counterstep.ledger.Happening;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A value is noted so that it can be set again; if nobody does, it was noted for nothing. */
final class NotedButNotRestored implements Check {
    @Override
    public About about() {
        return new About(
                "noted-but-not-restored",
                Severity.ERROR,
                "A setting is noted, and not as it was when all is done.");
    }

    @Override
    public boolean dependsOnOrder() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.endings().all(Remainder.NOT_RESTORED).stream()
                .filter(ending -> !ending.steps().isEmpty())
                .map(ending -> finding(facts, ending));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return DrawIt.fixes(facts, finding, Remainder.NOT_RESTORED);
    }

    private Finding finding(Facts facts, Ending ending) {
        List<StepId> restored =
                facts.ledger().happenings(ending.item(), Verb.RESTORE).stream()
                        .map(Happening::step)
                        .toList();
        List<StepId> disturbing = disturbing(facts, ending.item());
        List<StepId> all = new ArrayList<>(facts.stepsOf(ending));
        all.addAll(disturbing);
        all.addAll(restored);
        String name = facts.phrases().name(ending.item());
        String noted = name + " is noted in " + facts.phrases().steps(ending.steps());
        String disturbed =
                disturbing.isEmpty() ? "" : ", disturbed in " + facts.phrases().steps(disturbing);
        String fate =
                restored.isEmpty()
                        ? " and never restored."
                        : " and not restored after that; " + restoredBefore(facts, restored);
        return about().finding(
                        Phrases.sentence(noted + disturbed + fate),
                        facts.placeFirst(all.get(0), all),
                        ending.items());
    }

    private static String restoredBefore(Facts facts, List<StepId> restored) {
        return facts.phrases().steps(restored) + " comes too early.";
    }

    private static List<StepId> disturbing(Facts facts, ItemId setting) {
        return facts.index().item(setting) instanceof Setting known
                ? facts.ledger().disturbing(known).stream().map(Happening::step).toList()
                : List.of();
    }
}
