package counterstep.editor.window;

import counterstep.json.ProcedureReader;
import counterstep.model.Procedure;
import counterstep.store.PhotoFolder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The invented procedures that come with the program; each opens as a copy without a file. */
enum Sample {
    FAN("Fan of a bench supply", "bench-supply-fan"),
    STICK_UNIT("Stick unit of a radio controller", "orrin-c4-stick-unit"),
    HURRIED("The same, by a hurried writer", "orrin-c4-stick-unit-hurried");

    private final String title;
    private final String baseName;

    Sample(String title, String baseName) {
        this.title = title;
        this.baseName = baseName;
    }

    /** The words in the menu. */
    String title() {
        return title;
    }

    /** Reads it out of the jar. */
    Procedure procedure() {
        return bytes(baseName + ".procedure.json")
                .map(ProcedureReader::read)
                .orElseThrow(() -> new IllegalStateException("not packed: " + baseName));
    }

    /** Its photos. */
    PhotoFolder photos() {
        return PhotoFolder.of(name -> bytes(baseName + ".photos/" + name));
    }

    private static Optional<byte[]> bytes(String name) {
        try (InputStream in = Sample.class.getResourceAsStream("/samples/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
