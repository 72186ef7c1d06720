package counterstep.editor.timetable;

import counterstep.editor.analysis.Analysis;
import counterstep.model.Attendance;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.PageTimetable;
import counterstep.plan.PageTimetable.Bar;
import counterstep.toolchange.PickUp;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One analysis without loops, ready to be drawn.
 *
 * @param analysis what was derived
 * @param plan its critical paths
 * @param times one technician, down the page
 * @param tops where each row begins, in pixels; rows without anything in them are left out
 * @param height of all rows
 */
record Shown(
        Analysis analysis,
        CriticalPath plan,
        PageTimetable times,
        Map<Lane, Integer> tops,
        int height) {
    /** Height of the axis above the rows. */
    static final int AXIS = 22;

    /**
     * A tool in hand.
     *
     * @param label its name in short
     * @param start when it is picked up
     * @param end when another one is, or the work ends
     */
    record InHand(String label, int start, int end) {}

    static Shown of(Analysis analysis, CriticalPath plan) {
        PageTimetable times = PageTimetable.of(analysis.procedure());
        Map<Lane, Integer> tops = new EnumMap<>(Lane.class);
        int y = AXIS;
        for (Lane lane : Lane.values()) {
            if (used(lane, analysis, times)) {
                tops.put(lane, y);
                y += lane.height();
            }
        }
        return new Shown(analysis, plan, times, tops, y);
    }

    private static boolean used(Lane lane, Analysis analysis, PageTimetable times) {
        return switch (lane) {
            case HANDS, TOOL, LATER -> true;
            case WATCHED -> times.seconds(Attendance.WATCHED) > 0;
            case UNATTENDED -> times.seconds(Attendance.UNATTENDED) > 0;
            case SECOND_PERSON ->
                    analysis.procedure().steps().stream()
                            .anyMatch(step -> !step.secondPerson().isEmpty());
        };
    }

    /** The tools one after the other, each from its pick-up on. */
    List<InHand> tools() {
        List<PickUp> pickUps = analysis.toolChanges().pickUps();
        List<InHand> tools = new ArrayList<>();
        for (int place = 0; place < pickUps.size(); place++) {
            boolean last = place + 1 == pickUps.size();
            int end = last ? times.seconds() : start(pickUps.get(place + 1));
            tools.add(
                    new InHand(pickUps.get(place).tool().label(), start(pickUps.get(place)), end));
        }
        return tools;
    }

    /** A pick-up inside a step is drawn as if its actions took equally long. */
    private int start(PickUp pickUp) {
        Bar bar = bar(pickUp.step());
        int actions = Math.max(1, step(pickUp.step()).actions().size());
        double share = (double) pickUp.action() / actions;
        return bar.start() + (int) Math.round((bar.handsEnd() - bar.start()) * share);
    }

    Bar bar(StepId step) {
        return times.bars().get(analysis.index().page(step));
    }

    Step step(StepId step) {
        return analysis.index().step(step);
    }

    int number(StepId step) {
        return analysis.index().number(step);
    }

    boolean critical(StepId step) {
        return plan.critical(step);
    }

    /** By how much a step may start late without lengthening the whole, in seconds. */
    int later(StepId step) {
        return plan.times().get(step).totalFloat();
    }

    /** One step in words: number, title, when, how long, whether it may be late. */
    String told(StepId step) {
        Bar bar = bar(step);
        String late =
                critical(step) ? "critical" : "could run later by " + Clock.words(later(step));
        String helper = step(step).secondPerson();
        return Stream.of(
                        number(step) + " " + step(step).title(),
                        "from " + Clock.words(bar.start()) + " to " + Clock.words(bar.end()),
                        late,
                        helper.isEmpty() ? "" : "second person: " + helper)
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** How long it takes in one sentence. */
    String summary() {
        int watched = times.seconds(Attendance.WATCHED);
        int unattended = times.seconds(Attendance.UNATTENDED);
        return "one person "
                + Clock.words(times.seconds())
                + (watched > 0 ? ", " + Clock.words(watched) + " of it watched" : "")
                + (unattended > 0 ? ", " + Clock.words(unattended) + " of it unattended" : "")
                + "; critical path "
                + Clock.words(plan.seconds())
                + ": no number of people is faster; minutes";
    }
}
