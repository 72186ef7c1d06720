package counterstep.start;

import counterstep.cli.Window;
import counterstep.editor.window.Workbench;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.Optional;

/** The window on this machine's display, if it has one. */
final class Display implements Window {
    /** Asks for the screen itself: a display may be named and yet not answer. */
    @Override
    public boolean possible() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length
                            > 0;
        } catch (AWTError | HeadlessException | LinkageError noDisplay) {
            return false;
        }
    }

    @Override
    public void open(Optional<Path> file) {
        Workbench.open(file);
    }
}
