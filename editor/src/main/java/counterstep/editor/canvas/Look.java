package counterstep.editor.canvas;

import counterstep.model.Phase;
import java.util.Set;

/**
 * How the writer looks at the drawing; no part of the document.
 *
 * @param proposals whether proposed links are shown
 * @param folded the phases that are folded
 */
record Look(boolean proposals, Set<Phase> folded) {}
