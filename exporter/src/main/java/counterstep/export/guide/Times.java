package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Action;
import counterstep.model.Numbers;
import counterstep.model.Phase;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Wait;
import counterstep.plan.Durations;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** How long the work takes, and how often the tool changes. */
final class Times {
    private final Print print;

    Times(Print print) {
        this.print = print;
    }

    /** A row for each phase that has steps, and one for all. */
    List<PhaseTime> rows() {
        List<PhaseTime> rows = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            List<Step> steps =
                    print.procedure().steps().stream()
                            .filter(step -> step.phase() == phase)
                            .toList();
            if (!steps.isEmpty()) {
                rows.add(row(phase.word(), steps));
            }
        }
        rows.add(row("all", print.procedure().steps()));
        return rows;
    }

    private PhaseTime row(String name, List<Step> steps) {
        Set<StepId> ids = steps.stream().map(Step::id).collect(Collectors.toSet());
        long changes =
                print.changes().pickUps().stream()
                        .filter(pickUp -> ids.contains(pickUp.step()))
                        .count();
        return new PhaseTime(
                name,
                steps.size(),
                Numbers.minutesAndSeconds(steps.stream().mapToInt(Durations::seconds).sum()),
                Numbers.minutesAndSeconds(steps.stream().mapToInt(Times::waiting).sum()),
                (int) changes);
    }

    static int waiting(Step step) {
        return step.actions().stream()
                .map(Action::waiting)
                .flatMap(wait -> wait.stream())
                .mapToInt(Wait::seconds)
                .sum();
    }

    /** What the table cannot say. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        print.path()
                .ifPresent(
                        path ->
                                notes.add(
                                        "However many hands: not under "
                                                + Numbers.minutesAndSeconds(path.seconds())
                                                + " (critical path, minutes and seconds)."));
        long untimed =
                print.procedure().steps().stream().filter(step -> step.seconds().isEmpty()).count();
        if (untimed > 0) {
            notes.add(
                    Sentences.counted(
                            untimed,
                            "step has no time and counts 0.",
                            "steps have no time and count 0."));
        }
        return notes;
    }

    /** 'about 33 minutes': whole minutes, rounded up. */
    String about() {
        int minutes = (Durations.total(print.procedure()) + 59) / 60;
        return "about " + Sentences.counted(minutes, "minute", "minutes");
    }
}
