package counterstep.editor.timetable;

import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/**
 * Something that lasts for a while.
 *
 * @param kind what
 * @param step whose; empty for a tool
 * @param row where it is drawn
 * @param from seconds from the start of the work
 * @param to seconds from the start of the work
 * @param words what is written, longest first: the first that there is room for
 * @param critical whether it may not be late
 */
record Block(
        Kind kind,
        Optional<StepId> step,
        Row row,
        double from,
        double to,
        List<String> words,
        boolean critical) {
    /** How it is drawn. */
    enum Kind {
        /** Hands at work. */
        HANDS,
        /** A technician holds what another works on. */
        HELPS,
        /** A tool in hand. */
        TOOL,
        /** A tool is taken up. */
        PICK_UP,
        /** Nobody's hands. */
        WAIT,
        /** The second person holds. */
        HOLDS,
        /** By how much a step may be late: words alone. */
        LATER
    }

    /** Copies the list. */
    Block {
        words = List.copyOf(words);
    }

    /** Whether it belongs to a step in the eyes of a person with a mouse. */
    boolean isWork() {
        return step.isPresent() && kind != Kind.LATER;
    }
}
