package counterstep.plan;

import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When one technician does which step who works down the page and does nothing beside a wait. A
 * step takes its hands time first and then its waits, one after the other: a procedure does not say
 * how its actions share the hands time.
 *
 * @param bars one a step, in page order
 */
public record PageTimetable(List<Bar> bars) {
    /** Copies the list. */
    public PageTimetable {
        bars = List.copyOf(bars);
    }

    /** Lays the steps of a document end to end. */
    public static PageTimetable of(Procedure procedure) {
        List<Bar> bars = new ArrayList<>();
        long start = 0;
        for (Step step : procedure.steps()) {
            bars.add(bar(step, start));
            start += Durations.exact(step);
        }
        return new PageTimetable(bars);
    }

    private static Bar bar(Step step, long start) {
        long at = start + Durations.handsSeconds(step);
        int handsEnd = Durations.capped(at);
        List<Pause> pauses = new ArrayList<>();
        for (Wait wait :
                step.actions().stream().map(Action::waiting).flatMap(Optional::stream).toList()) {
            long end = at + wait.seconds();
            pauses.add(new Pause(wait.attendance(), Durations.capped(at), Durations.capped(end)));
            at = end;
        }
        return new Bar(step.id(), Durations.capped(start), handsEnd, pauses);
    }

    /** How long the whole takes. */
    public int seconds() {
        return bars.isEmpty() ? 0 : bars.get(bars.size() - 1).end();
    }

    /** How long the waits of a kind take together. */
    public int seconds(Attendance attendance) {
        return Durations.capped(
                bars.stream()
                        .flatMap(bar -> bar.pauses().stream())
                        .filter(pause -> pause.attendance() == attendance)
                        .mapToLong(pause -> (long) pause.end() - pause.start())
                        .sum());
    }

    /**
     * One step; whole seconds from the start of the work.
     *
     * @param step which
     * @param start when the hands begin
     * @param handsEnd when they are done
     * @param pauses its waits, the first of them from then on
     */
    public record Bar(StepId step, int start, int handsEnd, List<Pause> pauses) {
        /** Copies the list. */
        public Bar {
            pauses = List.copyOf(pauses);
        }

        /** When the step is done. */
        public int end() {
            return pauses.isEmpty() ? handsEnd : pauses.get(pauses.size() - 1).end();
        }
    }

    /**
     * One wait; whole seconds from the start of the work.
     *
     * @param attendance whether somebody must stay near
     * @param start when it begins
     * @param end when it is over
     */
    public record Pause(Attendance attendance, int start, int end) {}
}
