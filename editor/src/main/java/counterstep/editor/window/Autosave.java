package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.store.Journal;
import counterstep.store.Kept;
import counterstep.store.PhotoFolder;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Keeps unsaved work in a journal, on a thread of its own, some seconds after it was changed; lets
 * it go as soon as it is saved or given up.
 */
final class Autosave {
    private final Desk desk;
    private final Path folder;
    private final Consumer<Runnable> later;
    private final Consumer<Throwable> failed;
    private final ExecutorService worker = Executors.newSingleThreadExecutor();
    private boolean waiting;
    private boolean complained;
    private long kept;

    /** Used on the worker thread only. */
    private Optional<Journal> journal = Optional.empty();

    /**
     * Keeps what lies on a desk, from now on.
     *
     * @param desk the desk
     * @param folder where work is kept
     * @param later does something on the event thread, some seconds from now
     * @param failed is told, once, what kept the work from being kept
     */
    Autosave(Desk desk, Path folder, Consumer<Runnable> later, Consumer<Throwable> failed) {
        this.desk = desk;
        this.folder = folder;
        this.later = later;
        this.failed = failed;
        desk.onState(this::changed);
    }

    private void changed(DeskState state) {
        if (!desk.unsaved()) {
            work(() -> journal.ifPresent(Journal::clear));
            kept = state.generation();
        } else if (!waiting && kept != state.generation()) {
            waiting = true; // not put off by the next edit: who never pauses is kept as well
            later.accept(this::keep);
        }
    }

    private void keep() {
        waiting = false;
        if (desk.unsaved()) {
            DeskState state = desk.state();
            PhotoFolder source = desk.photos().atRisk();
            kept = state.generation();
            work(
                    () -> {
                        if (journal.isEmpty()) {
                            journal = Optional.of(Journal.in(folder));
                        }
                        journal.get().keep(state.procedure(), state.file(), source);
                    });
        }
    }

    /** Goes on where a window broke off: its journal is this one's from now on. */
    void goOn(Kept left) {
        work(
                () -> {
                    journal.ifPresent(Journal::close);
                    journal = Optional.of(left.journal());
                });
    }

    /** Lets go what a window left behind. */
    void discard(Kept left) {
        work(left.journal()::close);
    }

    /** Leaves it where it is, for another start. */
    void leave(Kept left) {
        work(left.journal()::leave);
    }

    /** The window closes properly: nothing is kept any longer. */
    void close() {
        work(() -> journal.ifPresent(Journal::close));
        worker.shutdown();
    }

    private void work(Runnable task) {
        if (worker.isShutdown()) {
            return; // the window is closed; what lies on its desk is safe or given up
        }
        worker.execute(
                () -> {
                    try {
                        task.run();
                    } catch (RuntimeException failure) {
                        SwingUtilities.invokeLater(() -> complain(failure));
                    }
                });
    }

    private void complain(RuntimeException failure) {
        if (!complained) {
            complained = true;
            failed.accept(failure);
        }
    }
}
