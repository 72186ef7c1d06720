package counterstep.editor.preview;

import java.net.URI;
import java.util.Optional;

/** Whatever shows web pages on this machine. */
interface Browser {
    /**
     * Opens a page, off the event thread; the sentence that says why that cannot be, or nothing.
     */
    Optional<String> open(URI address);
}
