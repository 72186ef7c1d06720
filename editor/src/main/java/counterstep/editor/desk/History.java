package counterstep.editor.desk;

import counterstep.model.Procedure;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Older and newer documents around the one that lies open. Untouched records are shared between
 * them, so there is no limit.
 */
final class History {
    /** A document and the name of the edit that lies between it and the open one. */
    private record Entry(String name, Procedure procedure) {}

    private final Deque<Entry> older = new ArrayDeque<>();
    private final Deque<Entry> newer = new ArrayDeque<>();

    /** An edit replaced {@code before}; what was undone can no longer be redone. */
    void record(String name, Procedure before) {
        older.push(new Entry(name, before));
        newer.clear();
    }

    /** The document before the last edit, which {@code open} then can be redone to. */
    Optional<Procedure> undo(Procedure open) {
        return step(older, newer, open);
    }

    /** The document that the last undo left. */
    Optional<Procedure> redo(Procedure open) {
        return step(newer, older, open);
    }

    Optional<String> undoName() {
        return Optional.ofNullable(older.peek()).map(Entry::name);
    }

    Optional<String> redoName() {
        return Optional.ofNullable(newer.peek()).map(Entry::name);
    }

    void clear() {
        older.clear();
        newer.clear();
    }

    private static Optional<Procedure> step(Deque<Entry> from, Deque<Entry> to, Procedure open) {
        Optional<Entry> entry = Optional.ofNullable(from.poll());
        entry.ifPresent(taken -> to.push(new Entry(taken.name(), open)));
        return entry.map(Entry::procedure);
    }
}
