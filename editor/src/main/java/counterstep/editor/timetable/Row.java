package counterstep.editor.timetable;

/**
 * One row of the timetable.
 *
 * @param name what stands in front of it; empty where it goes on with the row above
 * @param aside whether it tells what is beside the work
 * @param top where it begins, in pixels
 * @param height in pixels
 */
record Row(String name, boolean aside, int top, int height) {
    static final int HANDS = 36;
    static final int TOOL = 24;
    static final int WAIT = 26;
    static final int HOLDS = 24;
    static final int LATER = 22;

    int bottom() {
        return top + height;
    }
}
