package counterstep.editor.window;

import counterstep.input.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.logging.FileHandler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import javax.swing.SwingUtilities;

/** What goes wrong: one sentence for the user, the rest for a log that is made when needed. */
final class Trouble {
    private static final Logger LOG = Logger.getLogger("counterstep");
    private static final String LOG_FILE = "counterstep.log";

    private final Consumer<String> teller;
    private boolean told;
    private boolean logging;

    Trouble(Consumer<String> teller) {
        this.teller = teller;
    }

    /** Hears from now on of every failure that nobody catches. */
    void watch() {
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, failure) -> SwingUtilities.invokeLater(() -> uncaught(failure)));
    }

    /** What happened, in one sentence. */
    String sentence(Throwable failure) {
        if (failure instanceof BadInput refused) {
            return ended(refused.getMessage());
        }
        if (failure instanceof UncheckedIOException disk) {
            return ended(String.valueOf(disk.getCause().getMessage()));
        }
        log(failure);
        return "Something went wrong that should not (%s); the log %s says where."
                .formatted(failure.getClass().getSimpleName(), logFile());
    }

    private void uncaught(Throwable failure) {
        String sentence = sentence(failure);
        if (!told) {
            told = true;
            teller.accept(sentence + " Your work is still open; save it to be safe.");
        }
    }

    private void log(Throwable failure) {
        if (!logging) {
            logging = true;
            logToFile();
        }
        LOG.log(Level.SEVERE, "unexpected", failure);
    }

    private static void logToFile() {
        try {
            FileHandler file = new FileHandler("%t/" + LOG_FILE, true);
            file.setFormatter(new SimpleFormatter());
            LOG.addHandler(file);
        } catch (IOException notWritable) {
            LOG.log(Level.WARNING, "no log file", notWritable);
        }
    }

    private static Path logFile() {
        return Path.of(System.getProperty("java.io.tmpdir"), LOG_FILE);
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }
}
