package counterstep.editor.analysis;

import counterstep.handbook.WorkTimes;
import counterstep.model.Procedure;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;

/**
 * Examines documents one after the other. A document that is overtaken by a newer one is given up
 * between two stages, and its result is never told. Each result is told three times: at once, again
 * with the fewest tool changes and the fixes, which take longer, and with the timetables of the
 * crew. Each of the three has a thread of its own, since searches cannot be given up everywhere at
 * once and the next document is not to wait for that.
 */
public final class Analyst {
    private static final Logger LOG = Logger.getLogger(Analyst.class.getName());

    private static final int MILLISECONDS_OF_REST = 100;

    private final Executor worker;
    private final Executor patient;
    private final Executor searcher;
    private final Executor teller;
    private final AtomicLong newest = new AtomicLong();
    private final AtomicBoolean complained = new AtomicBoolean();
    private volatile WorkTimes figures = WorkTimes.published();
    private Consumer<Analysis> listener = result -> {};
    private Consumer<String> troubleListener = sentence -> {};

    /**
     * An analyst who has nothing to do yet.
     *
     * @param worker where the first part of the work is done, one task after the other
     * @param patient where fewest tool changes and fixes are found
     * @param searcher where the timetables of the crew are looked for
     * @param teller where results are told
     */
    Analyst(Executor worker, Executor patient, Executor searcher, Executor teller) {
        this.worker = worker;
        this.patient = patient;
        this.searcher = searcher;
        this.teller = teller;
    }

    /** The same, all being done where the first part is, as one task. */
    public Analyst(Executor worker, Executor teller) {
        this(worker, Runnable::run, Runnable::run, teller);
    }

    /**
     * Works on threads of its own and tells results on the event thread. The longer parts begin
     * when the document has rested for a moment, so that they take no time from drawing edits.
     */
    public static Analyst onOwnThreads() {
        Executor patient =
                CompletableFuture.delayedExecutor(
                        MILLISECONDS_OF_REST, TimeUnit.MILLISECONDS, onOneThread("patient"));
        return new Analyst(
                onOneThread("analyst"), patient, onOneThread("crew"), SwingUtilities::invokeLater);
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

    /** Estimates by these figures from now on. */
    public void estimateBy(WorkTimes times) {
        this.figures = times;
    }

    /** Takes up a document and gives up the one before; returns at once. */
    public void examine(Procedure procedure, long generation) {
        newest.set(generation);
        worker.execute(() -> work(procedure, generation));
    }

    private void work(Procedure procedure, long generation) {
        guarded(
                () ->
                        Stages.run(procedure, generation, figures, () -> overtaken(generation))
                                .ifPresent(
                                        first -> {
                                            teller.execute(() -> tell(first));
                                            patient.execute(() -> finish(first));
                                        }));
    }

    private void finish(Analysis first) {
        guarded(
                () ->
                        Stages.last(first, () -> overtaken(first.generation()))
                                .ifPresent(
                                        whole -> {
                                            teller.execute(() -> tell(whole));
                                            searcher.execute(() -> search(whole));
                                        }));
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
