package counterstep.editor.timetable;

import counterstep.editor.analysis.Analysis;
import counterstep.estimate.TimeShares;
import counterstep.estimate.Timing;
import counterstep.model.Step;

/** Whether times are measured or estimated, in words; figures are told with where they are from. */
final class TimeWords {
    private final Timing timing;

    TimeWords(Analysis analysis) {
        timing = analysis.timing();
    }

    /** Where the time of a step is from. */
    String of(Step step) {
        if (step.seconds().isPresent()) {
            return step.timeSource().word();
        }
        return timing.estimates()
                .of(step.id())
                .map(found -> "no time stated, " + figures(found.seconds()))
                .orElse("no time stated");
    }

    private String figures(int seconds) {
        return "by figures %s (%s)".formatted(Clock.words(seconds), timing.estimates().source());
    }

    /** How much of the whole is estimated; nothing where all is measured. */
    String ofWhole() {
        TimeShares shares = timing.shares();
        int untimed = shares.untimed().size();
        String stated =
                shares.estimated() > 0
                        ? ", " + Clock.words(shares.estimated()) + " of it estimated"
                        : "";
        String without =
                untimed == 0
                        ? ""
                        : ", %d %s without a time, %s"
                                .formatted(
                                        untimed,
                                        untimed == 1 ? "step" : "steps",
                                        figures(shares.reckoned()));
        return stated + without;
    }
}
