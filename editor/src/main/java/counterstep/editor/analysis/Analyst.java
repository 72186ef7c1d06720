package counterstep.editor.analysis;

import counterstep.model.Procedure;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;

/**
 * Examines documents one after the other on one worker thread, and looks for the timetables of the
 * crew on another, since that search cannot be given up everywhere at once. A document that is
 * overtaken by a newer one is given up between two stages, and its result is never told. Each
 * result is told three times: at once, again with the fewest tool changes and the fixes, which take
 * longer, and with the timetables of the crew.
 */
public final class Analyst {
    private static final Logger LOG = Logger.getLogger(Analyst.class.getName());

    private final Executor worker;
    private final Executor searcher;
    private final Executor teller;
    private final AtomicLong newest = new AtomicLong();
    private final AtomicBoolean complained = new AtomicBoolean();
    private Consumer<Analysis> listener = result -> {};
    private Consumer<String> troubleListener = sentence -> {};

    /**
     * An analyst who has nothing to do yet.
     *
     * @param worker where the work is done, one task after the other
     * @param searcher where the timetables of the crew are looked for
     * @param teller where results are told
     */
    public Analyst(Executor worker, Executor searcher, Executor teller) {
        this.worker = worker;
        this.searcher = searcher;
        this.teller = teller;
    }

    /** The same, the timetables too being looked for where the work is done. */
    public Analyst(Executor worker, Executor teller) {
        this(worker, worker, teller);
    }

    /** Works on threads of its own and tells results on the event thread. */
    public static Analyst onOwnThread() {
        return new Analyst(
                onOneThread("analyst"), onOneThread("crew"), SwingUtilities::invokeLater);
    }

    private static Executor onOneThread(String name) {
        return Executors.newSingleThreadExecutor(
                task -> {
                    Thread thread = new Thread(task, name);
                    thread.setDaemon(true);
                    return thread;
                });
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
        BooleanSupplier overtaken = () -> overtaken(generation);
        guarded(
                () -> {
                    Optional<Analysis> result = Stages.run(procedure, generation, overtaken);
                    result.ifPresent(first -> teller.execute(() -> tell(first)));
                    result.flatMap(first -> Stages.last(first, overtaken))
                            .ifPresent(
                                    whole -> {
                                        teller.execute(() -> tell(whole));
                                        searcher.execute(() -> search(whole));
                                    });
                });
    }

    private void search(Analysis whole) {
        guarded(
                () ->
                        Stages.crew(whole, () -> overtaken(whole.generation()))
                                .ifPresent(last -> teller.execute(() -> tell(last))));
    }

    private void guarded(Runnable task) {
        try {
            task.run();
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
