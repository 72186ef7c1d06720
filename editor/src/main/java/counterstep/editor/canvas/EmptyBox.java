package counterstep.editor.canvas;

import counterstep.export.shape.Mark;
import java.util.Optional;

/**
 * The place of a counterstep that is not there.
 *
 * @param x left edge at 100 %
 * @param y upper edge at 100 %
 * @param mark drawing of the first fastener or connector, if one is missing
 * @param items what nothing puts back
 */
record EmptyBox(double x, double y, Optional<Mark> mark, String items) {}
