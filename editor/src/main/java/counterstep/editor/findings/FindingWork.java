package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.edit.AddWaiver;
import counterstep.edit.DropWaiver;
import counterstep.edit.Edits;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import java.awt.Component;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What can be done about a finding: mend it, accept it, take the acceptance back. */
final class FindingWork {
    private final Desk desk;
    private final Component owner;
    private final Clock clock;
    private final ReviewerName reviewer;

    /**
     * Work on a desk.
     *
     * @param owner what dialogs belong to
     * @param clock tells the date of a waiver
     * @param reviewer the name that a waiver begins with
     */
    FindingWork(Desk desk, Component owner, Clock clock, ReviewerName reviewer) {
        this.desk = desk;
        this.owner = owner;
        this.clock = clock;
        this.reviewer = reviewer;
    }

    /** Shows what a fix changes, and applies it if that is wanted; whether it was. */
    boolean mend(Fix fix) {
        Procedure before = desk.state().procedure();
        if (stale() || !FixPreview.accepts(owner, fix, before)) {
            return false;
        }
        boolean done = desk.apply(new Edits(fix.name(), List.of(fix.edit()))).isEmpty();
        Set<StepId> touched = touched(before, desk.state().procedure());
        if (done && !touched.isEmpty()) {
            desk.select(Selection.ofSteps(touched));
        }
        return done;
    }

    /** A fix belongs to the document that it was worked out on. */
    private boolean stale() {
        long generation = desk.state().generation();
        return desk.analysis().map(Analysis::generation).filter(at -> at == generation).isEmpty();
    }

    private static Set<StepId> touched(Procedure before, Procedure after) {
        Set<Step> old = new HashSet<>(before.steps());
        return after.steps().stream()
                .filter(step -> !old.contains(step))
                .map(Step::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Asks for a reason and accepts a finding; whether it was accepted. */
    boolean waive(Finding finding) {
        String by = reviewer.in(desk.state().procedure());
        Optional<Waiver> waiver =
                new WaiverQuestion(owner, finding, by, LocalDate.now(clock).toString()).ask();
        waiver.map(AddWaiver::new).ifPresent(desk::apply);
        waiver.map(Waiver::name).ifPresent(reviewer::keep);
        return waiver.isPresent();
    }

    /** Takes back the acceptance of a finding. */
    void withdraw(Finding finding) {
        finding.waived().map(DropWaiver::new).ifPresent(desk::apply);
    }

    /** Asks how the checks are to be taken in this document. */
    void settings() {
        new SettingsQuestion(owner, desk.state().procedure()).ask().ifPresent(desk::apply);
    }
}
