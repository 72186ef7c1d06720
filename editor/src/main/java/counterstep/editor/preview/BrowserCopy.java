package counterstep.editor.preview;

import counterstep.export.Print;
import counterstep.export.html.HtmlGuide;
import counterstep.input.BadInput;
import counterstep.store.OutputFolder;
import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.SwingUtilities;

/** The guide as a private file of its own, for the browser; and links, which open there too. */
final class BrowserCopy {
    private final Browser browser;
    private final BiConsumer<String, Boolean> trouble;
    private Optional<OutputFolder> folder = Optional.empty();

    /**
     * No file yet.
     *
     * @param trouble told, on the event thread, in a sentence, what hindered it
     */
    BrowserCopy(Browser browser, BiConsumer<String, Boolean> trouble) {
        this.browser = browser;
        this.trouble = trouble;
    }

    /** Writes a guide and opens it; off the event thread. */
    synchronized void open(Print print) {
        try {
            OutputFolder to = folder.orElseGet(OutputFolder::temporary);
            folder = Optional.of(to);
            Path page = new HtmlGuide().write(print, to).get(0);
            page.toFile().deleteOnExit();
            browser.open(page.toUri()).ifPresent(this::tell);
        } catch (BadInput refused) {
            tell(refused.getMessage());
        }
    }

    /** Opens a link of the page; returns at once. */
    void follow(URI address) {
        Thread opener =
                new Thread(() -> browser.open(address).ifPresent(this::tell), "preview link");
        opener.setDaemon(true);
        opener.start();
    }

    private void tell(String sentence) {
        SwingUtilities.invokeLater(() -> trouble.accept(sentence, false));
    }
}
