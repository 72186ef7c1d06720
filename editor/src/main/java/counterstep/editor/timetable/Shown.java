package counterstep.editor.timetable;

import counterstep.model.StepId;
import java.util.List;
import java.util.Map;

/**
 * One timetable, ready to be drawn.
 *
 * @param rows from top to bottom
 * @param blocks what stands in them
 * @param steps in the order in which they are done
 * @param told each step in words
 * @param seconds how long the whole takes
 * @param summary the same in a sentence
 */
record Shown(
        List<Row> rows,
        List<Block> blocks,
        List<StepId> steps,
        Map<StepId, String> told,
        double seconds,
        String summary) {
    /** Height of the axis above the rows. */
    static final int AXIS = 22;

    int height() {
        return rows.isEmpty() ? 0 : rows.get(rows.size() - 1).bottom();
    }

    List<Block> of(StepId step) {
        return blocks.stream()
                .filter(Block::isWork)
                .filter(block -> block.step().filter(step::equals).isPresent())
                .toList();
    }
}
