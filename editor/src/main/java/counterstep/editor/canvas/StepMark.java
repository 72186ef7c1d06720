package counterstep.editor.canvas;

import counterstep.export.shape.Mark;

/**
 * A small drawing on a step with its count.
 *
 * @param mark the drawing
 * @param text what stands beside it, '2 × T5', '1'; may be empty
 */
record StepMark(Mark mark, String text) {}
