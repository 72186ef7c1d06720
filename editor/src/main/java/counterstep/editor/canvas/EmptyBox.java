package counterstep.editor.canvas;

import counterstep.export.shape.Mark;
import counterstep.model.StepId;
import java.util.Optional;

/**
 * The place of a counterstep that is not there.
 *
 * @param off the step that takes off what is missing
 * @param x left edge at 100 %
 * @param y upper edge at 100 %
 * @param mark drawing of the first fastener or connector, if one is missing
 * @param items what nothing puts back
 */
record EmptyBox(StepId off, double x, double y, Optional<Mark> mark, String items) {}
