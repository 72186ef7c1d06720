package counterstep.editor.window;

import counterstep.input.BadInput;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingWorker;

/** Work that is slow or risky, off the event thread; its end is told on the event thread. */
final class Background {
    private static final Logger LOG = Logger.getLogger(Background.class.getName());

    private Background() {}

    /**
     * Runs work on a worker thread.
     *
     * @param work what is done
     * @param done gets the result
     * @param failed gets one sentence: what happened
     */
    static <T> void run(Callable<T> work, Consumer<T> done, Consumer<String> failed) {
        new SwingWorker<T, Void>() {
            @Override
            protected T doInBackground() throws Exception {
                return work.call();
            }

            @Override
            protected void done() {
                try {
                    done.accept(get());
                } catch (ExecutionException thrown) {
                    failed.accept(sentence(thrown.getCause()));
                } catch (InterruptedException stopped) {
                    Thread.currentThread().interrupt();
                }
            }
        }.execute();
    }

    private static String sentence(Throwable cause) {
        if (cause instanceof BadInput refused) {
            return refused.getMessage();
        }
        LOG.log(Level.WARNING, "unexpected", cause);
        return "Something went wrong that should not: " + cause;
    }
}
