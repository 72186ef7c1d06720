package counterstep.editor.timetable;

/** Times as they stand on screen. */
final class Clock {
    private Clock() {}

    /** Minutes and seconds, '32:15'. */
    static String words(int seconds) {
        return "%d:%02d".formatted(seconds / 60, seconds % 60);
    }
}
