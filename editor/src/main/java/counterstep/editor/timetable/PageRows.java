package counterstep.editor.timetable;

import counterstep.editor.analysis.Analysis;
import counterstep.model.Attendance;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.PageTimetable;
import counterstep.plan.PageTimetable.Bar;
import counterstep.toolchange.PickUp;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One technician down the page, who does nothing beside a wait. */
final class PageRows {
    private final Analysis analysis;
    private final CriticalPath plan;
    private final PageTimetable times;
    private final Drawing drawing;

    private PageRows(Analysis analysis, CriticalPath plan) {
        this.analysis = analysis;
        this.plan = plan;
        times = PageTimetable.of(analysis.procedure());
        drawing = new Drawing(analysis, plan);
    }

    static Shown of(Analysis analysis, CriticalPath plan) {
        return new PageRows(analysis, plan).shown();
    }

    private Shown shown() {
        Row hands = drawing.row("Hands", Row.HANDS);
        for (Bar bar : times.bars()) {
            List<String> number = List.of(drawing.number(bar.step()));
            drawing.work(Block.Kind.HANDS, bar.step(), hands, bar.start(), bar.handsEnd(), number);
            drawing.tell(bar.step(), told(bar));
        }
        tools(drawing.row("Tool in hand", Row.TOOL));
        waits(Attendance.WATCHED, "Watched");
        waits(Attendance.UNATTENDED, "Unattended");
        secondPerson();
        later(drawing.aside("Could run later by", Row.LATER));
        return drawing.shown(times.seconds(), summary());
    }

    /** The tools one after the other, each from its pick-up on. */
    private void tools(Row row) {
        List<PickUp> pickUps = analysis.toolChanges().pickUps();
        for (int place = 0; place < pickUps.size(); place++) {
            boolean last = place + 1 == pickUps.size();
            double end = last ? times.seconds() : start(pickUps.get(place + 1));
            PickUp pickUp = pickUps.get(place);
            drawing.tool(row, Block.Kind.TOOL, start(pickUp), end, pickUp.tool().label());
        }
    }

    /** A pick-up inside a step is drawn as if its actions took equally long. */
    private double start(PickUp pickUp) {
        Bar bar = times.bars().get(analysis.index().page(pickUp.step()));
        int actions = Math.max(1, step(pickUp.step()).actions().size());
        double share = (double) pickUp.action() / actions;
        return bar.start() + (bar.handsEnd() - bar.start()) * share;
    }

    private Step step(StepId step) {
        return analysis.index().step(step);
    }

    private void waits(Attendance attendance, String name) {
        if (times.seconds(attendance) == 0) {
            return;
        }
        Row row = drawing.row(name, Row.WAIT);
        for (Bar bar : times.bars()) {
            bar.pauses().stream()
                    .filter(pause -> pause.attendance() == attendance)
                    .filter(pause -> pause.end() > pause.start())
                    .forEach(
                            pause ->
                                    drawing.work(
                                            Block.Kind.WAIT,
                                            bar.step(),
                                            row,
                                            pause.start(),
                                            pause.end(),
                                            drawing.waiting(
                                                    bar.step(), pause.end() - pause.start())));
        }
    }

    private void secondPerson() {
        List<Bar> held =
                times.bars().stream()
                        .filter(bar -> !step(bar.step()).secondPerson().isEmpty())
                        .toList();
        if (!held.isEmpty()) {
            Row row = drawing.aside("Second person", Row.HOLDS);
            for (Bar bar : held) {
                List<String> words = List.of(step(bar.step()).secondPerson());
                drawing.work(Block.Kind.HOLDS, bar.step(), row, bar.start(), bar.handsEnd(), words);
            }
        }
    }

    private void later(Row row) {
        for (Bar bar : times.bars()) {
            if (!plan.critical(bar.step())) {
                List<String> words = List.of(Clock.words(later(bar.step())));
                drawing.work(Block.Kind.LATER, bar.step(), row, bar.start(), bar.end(), words);
            }
        }
    }

    /** By how much a step may start late without lengthening the whole, in seconds. */
    private int later(StepId step) {
        return plan.times().get(step).totalFloat();
    }

    /** One step in words: number, title, when, whether it may be late. */
    private String told(Bar bar) {
        StepId step = bar.step();
        String late =
                plan.critical(step) ? "critical" : "could run later by " + Clock.words(later(step));
        String helper = step(step).secondPerson();
        return Stream.of(
                        drawing.number(step) + " " + step(step).title(),
                        "from " + Clock.words(bar.start()) + " to " + Clock.words(bar.end()),
                        new TimeWords(analysis).of(step(step)),
                        late,
                        helper.isEmpty() ? "" : "second person: " + helper)
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String summary() {
        int watched = times.seconds(Attendance.WATCHED);
        int unattended = times.seconds(Attendance.UNATTENDED);
        return "one person "
                + Clock.words(times.seconds())
                + " without tool changes"
                + new TimeWords(analysis).ofWhole()
                + (watched > 0 ? ", " + Clock.words(watched) + " watched" : "")
                + (unattended > 0 ? ", " + Clock.words(unattended) + " unattended" : "")
                + "; critical path "
                + Clock.words(plan.seconds())
                + ": no crew is faster";
    }
}
