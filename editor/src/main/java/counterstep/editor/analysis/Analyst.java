package counterstep.editor.analysis;

import counterstep.model.Procedure;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;

/**
 * Examines documents one after the other on one worker thread. A document that is overtaken by a
 * newer one is given up between two stages, and its result is never told. Each result is told three
 * times: at once, again with the fewest tool changes and the fixes, which take longer, and with the
 * timetables of the crew.
 */
public final class Analyst {
    private static final Logger LOG = Logger.getLogger(Analyst.class.getName());

    private final Executor worker;
    private final Executor teller;
    private final AtomicLong newest = new AtomicLong();
    private final AtomicBoolean complained = new AtomicBoolean();
    private Consumer<Analysis> listener = result -> {};
    private Consumer<String> troubleListener = sentence -> {};

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

    /** Who is told, once, in a sentence, that an analysis failed; the cause is in the log. */
    public void onTrouble(Consumer<String> told) {
        this.troubleListener = told;
    }

    /** Takes up a document and gives up the one before; returns at once. */
    public void examine(Procedure procedure, long generation) {
        newest.set(generation);
        worker.execute(() -> work(procedure, generation));
    }

    private void work(Procedure procedure, long generation) {
        try {
            Optional<Analysis> result =
                    Stages.run(procedure, generation, () -> overtaken(generation));
            result.ifPresent(first -> teller.execute(() -> tell(first)));
            Optional<Analysis> whole =
                    result.flatMap(first -> Stages.last(first, () -> overtaken(generation)));
            whole.ifPresent(second -> teller.execute(() -> tell(second)));
            whole.flatMap(second -> Stages.crew(second, () -> overtaken(generation)))
                    .ifPresent(third -> teller.execute(() -> tell(third)));
        } catch (RuntimeException failure) {
            LOG.log(Level.SEVERE, "an analysis failed", failure);
            if (complained.compareAndSet(false, true)) {
                teller.execute(() -> troubleListener.accept(sentence(failure)));
            }
        }
    }

    private void tell(Analysis result) {
        if (!overtaken(result.generation())) {
            listener.accept(result);
        }
    }

    private boolean overtaken(long generation) {
        return newest.get() != generation;
    }

    private static String sentence(RuntimeException failure) {
        return "The checks failed on this document (%s); findings and plan stay as they were, and"
                        .formatted(failure.getClass().getSimpleName())
                + " your work is not touched.";
    }
}
