package counterstep.editor.exporting;

import counterstep.export.Choices;
import counterstep.export.Exporter;
import java.nio.file.Path;
import java.util.List;

/**
 * What is to be written, and where.
 *
 * @param formats one or more
 * @param choices for all of them
 * @param folder for the files
 */
public record ExportOrder(List<Exporter> formats, Choices choices, Path folder) {
    /** Copies the list. */
    public ExportOrder {
        formats = List.copyOf(formats);
    }
}
