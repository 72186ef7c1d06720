package counterstep.editor.timetable;

import counterstep.model.Numbers;

/** Times as they stand on screen. */
final class Clock {
    private Clock() {}

    /** Minutes and seconds, '32:15'; parts of a second count as a whole one. */
    static String words(double seconds) {
        return Numbers.minutesAndSeconds((long) Math.ceil(seconds));
    }
}
