package counterstep.editor.timetable;

import counterstep.crew.CrewTimetable;
import counterstep.crew.CrewTimetable.Pause;
import counterstep.crew.CrewTimetable.Work;
import counterstep.editor.analysis.Analysis;
import counterstep.model.Attendance;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A crew at work: a row and the tool in hand for each technician, the waits, who holds. */
final class CrewRows {
    private static final double TENTHS = 10;

    private final Analysis analysis;
    private final CriticalPath plan;
    private final CrewTimetable times;
    private final Drawing drawing;

    private CrewRows(Analysis analysis, CriticalPath plan, CrewTimetable times) {
        this.analysis = analysis;
        this.plan = plan;
        this.times = times;
        drawing = new Drawing(analysis, plan);
    }

    static Shown of(Analysis analysis, CriticalPath plan, CrewTimetable times, String summary) {
        return new CrewRows(analysis, plan, times).shown(summary);
    }

    private Shown shown(String summary) {
        times.works().forEach(work -> drawing.tell(work.step(), told(work)));
        for (int person = 1; person <= times.crew().technicians(); person++) {
            technician(person);
        }
        waits(Attendance.WATCHED, "Watched");
        waits(Attendance.UNATTENDED, "Unattended");
        secondPerson();
        return drawing.shown(times.tenths() / TENTHS, summary);
    }

    private void technician(int person) {
        boolean alone = times.crew().technicians() == 1;
        Row row = drawing.row(alone ? "Hands" : "Technician " + person, Row.HANDS);
        for (Work work : times.of(person)) {
            boolean does = work.person() == person;
            String number = drawing.number(work.step());
            drawing.work(
                    does ? Block.Kind.HANDS : Block.Kind.HELPS,
                    work.step(),
                    row,
                    work.start() / TENTHS,
                    work.handsEnd() / TENTHS,
                    does ? List.of(number) : List.of("holds at " + number, "holds", ""));
        }
        Row tools =
                alone
                        ? drawing.row("Tool in hand", Row.TOOL)
                        : drawing.aside("Tool in hand", Row.TOOL);
        HandTools.of(times, person, analysis.tooling(), this::step)
                .forEach(
                        tool -> {
                            double from = tool.start() / TENTHS;
                            double held = tool.inHand() / TENTHS;
                            String label = tool.tool().label();
                            drawing.tool(tools, Block.Kind.PICK_UP, from, held, "");
                            drawing.tool(tools, Block.Kind.TOOL, held, tool.end() / TENTHS, label);
                        });
    }

    private Step step(StepId step) {
        return analysis.index().step(step);
    }

    /** Waits that go on at the same time stand below each other. */
    private void waits(Attendance attendance, String name) {
        List<Row> rows = new ArrayList<>();
        List<Integer> free = new ArrayList<>();
        for (Work work : times.works()) {
            for (Pause pause : work.pauses()) {
                if (pause.attendance() != attendance || pause.end() == pause.start()) {
                    continue;
                }
                int at = 0;
                while (at < free.size() && free.get(at) > pause.start()) {
                    at++;
                }
                if (at == free.size()) {
                    rows.add(drawing.row(at == 0 ? name : "", Row.WAIT));
                    free.add(0);
                }
                free.set(at, pause.end());
                double from = pause.start() / TENTHS;
                double to = pause.end() / TENTHS;
                List<String> words = drawing.waiting(work.step(), to - from);
                drawing.work(Block.Kind.WAIT, work.step(), rows.get(at), from, to, words);
            }
        }
    }

    private void secondPerson() {
        List<Work> held =
                times.works().stream()
                        .filter(
                                work ->
                                        work.holder()
                                                .filter(holder -> holder.technician().isEmpty())
                                                .isPresent())
                        .toList();
        if (!held.isEmpty()) {
            Row row = drawing.aside("Second person", Row.HOLDS);
            for (Work work : held) {
                drawing.work(
                        Block.Kind.HOLDS,
                        work.step(),
                        row,
                        work.start() / TENTHS,
                        work.handsEnd() / TENTHS,
                        List.of(step(work.step()).secondPerson()));
            }
        }
    }

    /** One step in words: number, title, who, when, who holds. */
    private String told(Work work) {
        String who = times.crew().technicians() == 1 ? "" : "technician " + work.person();
        return Stream.of(
                        drawing.number(work.step()) + " " + step(work.step()).title(),
                        who,
                        "from "
                                + Clock.words(work.start() / TENTHS)
                                + " to "
                                + Clock.words(work.end() / TENTHS),
                        plan.critical(work.step()) ? "critical" : "",
                        new TimeWords(analysis).of(step(work.step())),
                        holder(work))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String holder(Work work) {
        return work.holder()
                .map(
                        holder ->
                                holder.technician()
                                        .map(person -> "technician " + person + " holds")
                                        .orElse(
                                                "second person: "
                                                        + step(work.step()).secondPerson()))
                .orElse("");
    }
}
