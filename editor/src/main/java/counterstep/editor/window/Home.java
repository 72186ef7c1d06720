package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import java.nio.file.Path;
import java.time.Clock;

/**
 * Where a window keeps what shall outlast it.
 *
 * @param remembered the user's habits
 * @param dataFolder what the program itself puts on the disk
 * @param clock says when
 */
record Home(Remembered remembered, Path dataFolder, Clock clock) {}
