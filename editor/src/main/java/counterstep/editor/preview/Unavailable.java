package counterstep.editor.preview;

import java.util.Locale;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeoutException;

/** Why there is no preview, in a sentence. */
final class Unavailable {
    private Unavailable() {}

    /** The sentence for what JavaFX threw. */
    static String sentence(Throwable failure) {
        Throwable cause =
                failure instanceof CompletionException && failure.getCause() != null
                        ? failure.getCause()
                        : failure;
        return "The preview needs JavaFX, which cannot be loaded here (%s)%s. The guide can be read and printed in the browser."
                .formatted(reason(cause), advice(System.getProperty("os.name", "")));
    }

    private static String reason(Throwable cause) {
        if (cause instanceof TimeoutException) {
            return "it does not answer";
        }
        String first = String.valueOf(cause.getMessage()).lines().findFirst().orElse("").strip();
        return cause.getMessage() == null || first.isEmpty()
                ? cause.getClass().getSimpleName()
                : first.replaceAll("\\.$", "");
    }

    private static String advice(String system) {
        return system.toLowerCase(Locale.ROOT).startsWith("linux")
                ? "; it uses GTK 3, on Debian the package libgtk-3-0"
                : "";
    }
}
