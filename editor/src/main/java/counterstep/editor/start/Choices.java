package counterstep.editor.start;

import counterstep.editor.theme.Theme;
import java.nio.file.Path;

/** What the start page lets its user choose; the window does it. */
public interface Choices {
    /** Begins an empty procedure. */
    void startNew();

    /** Asks for a file and opens it. */
    void open();

    /** Opens a file. */
    void open(Path file);

    /** Opens a copy of a sample. */
    void open(Sample sample);

    /** Shows the guide of a sample as it prints. */
    void seeGuide(Sample sample);

    /** Shows the sheet of keys. */
    void keys();

    /** Switches the theme. */
    void show(Theme theme);

    /** Closes the window. */
    void close();
}
