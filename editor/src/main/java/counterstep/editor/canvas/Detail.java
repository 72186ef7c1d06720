package counterstep.editor.canvas;

/** How much of a step is read, by how near it is looked at. */
enum Detail {
    /** Its place and its trouble. */
    FAR,
    /** What and how many. */
    MIDDLE,
    /** Everything: actions, photo, hazard. */
    NEAR;

    private static final double MIDDLE_FROM = 0.58;
    private static final double NEAR_FROM = 1.3;

    /** What is read at a zoom; 1 is 100 %. */
    static Detail at(double zoom) {
        if (zoom < MIDDLE_FROM) {
            return FAR;
        }
        return zoom < NEAR_FROM ? MIDDLE : NEAR;
    }
}
