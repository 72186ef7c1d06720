package counterstep.editor.timetable;

import counterstep.editor.analysis.Analysis;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rows and blocks while they are being collected. */
final class Drawing {
    private final Analysis analysis;
    private final CriticalPath plan;
    private final List<Row> rows = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<StepId> steps = new ArrayList<>();
    private final Map<StepId, String> told = new HashMap<>();

    Drawing(Analysis analysis, CriticalPath plan) {
        this.analysis = analysis;
        this.plan = plan;
    }

    /** A row of the work below those that are there. */
    Row row(String name, int height) {
        return row(name, false, height);
    }

    /** A row that tells what is beside the work. */
    Row aside(String name, int height) {
        return row(name, true, height);
    }

    private Row row(String name, boolean aside, int height) {
        int top = rows.isEmpty() ? Shown.AXIS : rows.get(rows.size() - 1).bottom();
        Row row = new Row(name, aside, top, height);
        rows.add(row);
        return row;
    }

    void tool(Row row, Block.Kind kind, double from, double to, String word) {
        blocks.add(new Block(kind, Optional.empty(), row, from, to, List.of(word), false));
    }

    void work(Block.Kind kind, StepId step, Row row, double from, double to, List<String> words) {
        boolean critical = plan.critical(step) && to > from;
        blocks.add(new Block(kind, Optional.of(step), row, from, to, words, critical));
    }

    /** Steps are told of in the order in which they are done. */
    void tell(StepId step, String words) {
        steps.add(step);
        told.put(step, words);
    }

    String number(StepId step) {
        return String.valueOf(analysis.index().number(step));
    }

    /** What a wait is called, where there is room and where there is less. */
    List<String> waiting(StepId step, double seconds) {
        String number = number(step);
        String time = Clock.words(seconds);
        return List.of(
                number + " " + analysis.index().step(step).title() + ", " + time,
                number + ", " + time,
                number);
    }

    Shown shown(double seconds, String summary) {
        return new Shown(List.copyOf(rows), List.copyOf(blocks), steps, told, seconds, summary);
    }
}
