package counterstep.check.completeness;

import counterstep.edit.Edit;
import counterstep.edit.FreshIds;
import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Adds a step at the end that tries the device, after all that is put back. */
record TryAtTheEnd() implements Edit {
    /** Hands time of a short trial, in seconds; a guess. */
    private static final int SECONDS = 60;

    @Override
    public String name() {
        return "Add the test";
    }

    @Override
    public Procedure apply(Procedure before) {
        Action check = Action.of(Verb.CHECK, Optional.empty(), 1);
        Step test =
                new StepDraft(FreshIds.step(before), Phase.VERIFY, "Try the device")
                        .text("Try everything that was opened.")
                        .actions(List.of(check))
                        .seconds(OptionalInt.of(SECONDS))
                        .step();
        List<Step> steps = new ArrayList<>(before.steps());
        steps.add(test);
        List<Link> links = new ArrayList<>(before.links());
        ends(before).forEach(end -> links.add(Link.drawn(end, test.id())));
        return before.draft().steps(steps).links(links).procedure();
    }

    private static List<StepId> ends(Procedure before) {
        Precedence precedence = Precedence.of(before);
        return before.steps().stream()
                .filter(step -> step.phase().compareTo(Phase.REASSEMBLY) >= 0)
                .map(Step::id)
                .filter(step -> precedence.directlyAfter(step).isEmpty())
                .toList();
    }
}
