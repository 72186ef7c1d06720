package counterstep.editor.exporting;

import counterstep.export.Choices;
import counterstep.export.Print;
import counterstep.model.Procedure;
import counterstep.store.PhotoFolder;

/**
 * The document that is exported.
 *
 * @param baseName what the files are called before the end of their names
 * @param procedure as it is now
 * @param photos where its photos lie
 */
public record Exported(String baseName, Procedure procedure, PhotoFolder photos) {
    /** Its print. */
    public Print print(Choices choices) {
        return Print.of(baseName, procedure, photos, choices);
    }
}
