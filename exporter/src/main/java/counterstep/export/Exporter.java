package counterstep.export;

import counterstep.store.OutputFolder;
import java.nio.file.Path;
import java.util.List;

/** One format in which a procedure leaves the program. */
public interface Exporter {
    /** Its short name on the command line: 'html'. */
    String id();

    /** Its name on screen: 'Guide, HTML'. */
    String name();

    /**
     * Writes the files of this format, each whole or not at all.
     *
     * @return the files that a reader opens, first the main one
     */
    List<Path> write(Print print, OutputFolder folder);
}
