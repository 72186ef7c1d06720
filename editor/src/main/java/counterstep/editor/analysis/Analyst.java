package counterstep.editor.analysis;

import counterstep.model.Procedure;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Examines documents one after the other on one worker thread. A document that is overtaken by a
 * newer one is given up between two stages, and its result is never told.
 */
public final class Analyst {
    private final Executor worker;
    private final Executor teller;
    private final AtomicLong newest = new AtomicLong();
    private Consumer<Analysis> listener = result -> {};

    /**
     * An analyst who has nothing to do yet.
     *
     * @param worker where the work is done, one task after the other
     * @param teller where results are told
     */
    public Analyst(Executor worker, Executor teller) {
        this.worker = worker;
        this.teller = teller;
    }

    /** Works on a thread of its own and tells results on the event thread. */
    public static Analyst onOwnThread() {
        Executor worker =
                Executors.newSingleThreadExecutor(
                        task -> {
                            Thread thread = new Thread(task, "analyst");
                            thread.setDaemon(true);
                            return thread;
                        });
        return new Analyst(worker, SwingUtilities::invokeLater);
    }

    /** Who is told of results. */
    public void onResult(Consumer<Analysis> told) {
        this.listener = told;
    }

    /** Takes up a document and gives up the one before; returns at once. */
    public void examine(Procedure procedure, long generation) {
        newest.set(generation);
        worker.execute(() -> work(procedure, generation));
    }

    private void work(Procedure procedure, long generation) {
        if (overtaken(generation)) {
            return;
        }
        Analysis result = Analysis.of(procedure, generation);
        teller.execute(() -> tell(result));
    }

    private void tell(Analysis result) {
        if (!overtaken(result.generation())) {
            listener.accept(result);
        }
    }

    private boolean overtaken(long generation) {
        return newest.get() != generation;
    }
}
