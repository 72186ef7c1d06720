package counterstep.editor.desk;

import counterstep.model.Procedure;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What lies on the desk at one moment.
 *
 * @param procedure the document
 * @param selection what of it is selected
 * @param file where it was opened from or last saved; empty for a new one
 * @param generation raised by every change of the document, undo included; never goes back
 */
public record DeskState(
        Procedure procedure, Selection selection, Optional<Path> file, long generation) {}
