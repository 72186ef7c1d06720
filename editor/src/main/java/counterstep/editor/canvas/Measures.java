package counterstep.editor.canvas;

/** Sizes of the drawing in pixels at 100 %. */
final class Measures {
    static final double WIDTH = 236;
    static final double HEIGHT = 74;
    static final double ROW = 90;
    static final double COLUMN_GAP = 196;
    static final double RIGHT_COLUMN = WIDTH + COLUMN_GAP;
    static final double CORNER = 6;
    static final double RING = 4;
    static final double MARGIN = 24;
    static final double FOOT = 96;

    /** The smallest target for a pointer (WCAG 2.2, 2.5.8). */
    static final double TARGET = 24;

    private Measures() {}
}
