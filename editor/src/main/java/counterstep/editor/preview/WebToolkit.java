package counterstep.editor.preview;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;

/** JavaFX's toolkit: started once a process, away from the event thread, and only if asked for. */
final class WebToolkit {
    private static final int PATIENCE_SECONDS = 30;

    /** Kept, so that its level is: it would warn of the class path, which is meant. */
    private static final Logger LOG = Logger.getLogger("javafx");

    private static final CompletableFuture<Void> STARTED = new CompletableFuture<>();
    private static boolean asked;

    private WebToolkit() {}

    /**
     * Starts it; returns at once.
     *
     * @return done when it runs; fails with whatever JavaFX threw where it cannot be loaded
     */
    static synchronized CompletableFuture<Void> start() {
        if (!asked) {
            asked = true;
            LOG.setLevel(Level.SEVERE);
            Thread starter = new Thread(WebToolkit::run, "preview toolkit");
            starter.setDaemon(true); // and with it all threads it starts: a closed window ends all
            starter.start();
        }
        return STARTED.copy().orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    private static void run() {
        try {
            Platform.startup(() -> STARTED.complete(null));
            Platform.setImplicitExit(false); // a hidden preview comes back
        } catch (IllegalStateException running) {
            Platform.runLater(() -> STARTED.complete(null));
        } catch (RuntimeException | LinkageError notHere) {
            STARTED.completeExceptionally(notHere);
        }
    }
}
