package counterstep.editor.window;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import javax.swing.Timer;

/**
 * Work that is slow or risky, off the event thread; its end is told on the event thread. What lasts
 * is shown, and can be stopped.
 */
final class Background {
    private static final int SHOWN_AFTER_MILLISECONDS = 400;

    /**
     * A piece of work.
     *
     * @param <T> what comes of it
     */
    interface Work<T> {
        /** Does it, and leaves early when it finds itself stopped. */
        T run(BooleanSupplier stopped) throws Exception;
    }

    /** Where work that lasts is shown. */
    interface Board {
        /** Work has begun to last. */
        void begin(String what, Runnable stop);

        /** It is over. */
        void end();
    }

    private final Board board;
    private final Trouble trouble;

    Background(Board board, Trouble trouble) {
        this.board = board;
        this.trouble = trouble;
    }

    /**
     * Runs work on a worker thread. Work that the user stops tells nothing.
     *
     * @param what what is shown while it lasts, 'Opening pump.procedure.json'
     * @param work what is done
     * @param done gets the result
     * @param failed gets one sentence: what happened
     */
    <T> void run(String what, Work<T> work, Consumer<T> done, Consumer<String> failed) {
        SwingWorker<T, Void> worker =
                new SwingWorker<>() {
                    private final Timer shown = shownLater(what, () -> cancel(false));

                    @Override
                    protected T doInBackground() throws Exception {
                        return work.run(this::isCancelled);
                    }

                    @Override
                    protected void done() {
                        shown.stop();
                        board.end();
                        try {
                            done.accept(get());
                        } catch (ExecutionException thrown) {
                            failed.accept(trouble.sentence(thrown.getCause()));
                        } catch (CancellationException stopped) {
                            return; // the user knows: it was the user who stopped it
                        } catch (InterruptedException stopped) {
                            Thread.currentThread().interrupt();
                        }
                    }
                };
        worker.execute();
    }

    private Timer shownLater(String what, Runnable stop) {
        Timer timer = new Timer(SHOWN_AFTER_MILLISECONDS, event -> board.begin(what, stop));
        timer.setRepeats(false);
        timer.start();
        return timer;
    }
}
