package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import counterstep.store.DataFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.function.Consumer;
import javax.swing.Timer;

/**
 * Where a window keeps what shall outlast it.
 *
 * @param remembered the user's habits
 * @param dataFolder what the program itself puts on the disk
 * @param clock says when
 * @param later does something on the event thread, some seconds from now
 */
record Home(Remembered remembered, Path dataFolder, Clock clock, Consumer<Runnable> later) {
    private static final int SECONDS_UNTIL_KEPT = 4;

    /** That of the user who runs the program. */
    static Home ofUser() {
        return new Home(
                Remembered.ofUser(),
                DataFolder.ofUser(),
                Clock.system(ZoneId.systemDefault()),
                Home::inSomeSeconds);
    }

    /** Where unsaved work is kept. */
    Path journals() {
        return dataFolder.resolve("kept");
    }

    private static void inSomeSeconds(Runnable act) {
        Timer timer = new Timer(SECONDS_UNTIL_KEPT * 1000, event -> act.run());
        timer.setRepeats(false);
        timer.start();
    }
}
