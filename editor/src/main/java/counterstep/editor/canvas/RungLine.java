package counterstep.editor.canvas;

import counterstep.model.StepId;

/**
 * What joins a step and its counterstep: a dotted line that names the items.
 *
 * @param left by whose id the card goes where it leaves
 * @param right by whose id the card goes that it reaches; the left one where it is broken
 * @param x1 where it leaves the left step
 * @param y1 level there
 * @param x2 where it reaches the right one
 * @param y2 level there; other than {@code y1} where the pair does not stand level
 * @param label the items
 * @param broken whether it leads to an empty place
 */
record RungLine(
        StepId left,
        StepId right,
        double x1,
        double y1,
        double x2,
        double y2,
        String label,
        boolean broken) {}
