package counterstep.cli;

import java.nio.file.Path;
import java.util.Optional;

/** The window, as far as the command line knows it: whether one can be shown, and showing it. */
public interface Window {
    /** Whether this process can show a window. */
    boolean possible();

    /** Shows the window, with a file where one is named, and returns at once. */
    void open(Optional<Path> file);
}
