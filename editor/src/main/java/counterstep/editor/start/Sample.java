package counterstep.editor.start;

import counterstep.json.ProcedureReader;
import counterstep.model.Procedure;
import counterstep.store.PhotoFolder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The invented procedures that come with the program; each opens as a copy without a file. */
public enum Sample {
    FAN("Fan of a bench supply", "mains cautions, a first look", "bench-supply-fan"),
    STICK_UNIT(
            "Stick unit of a radio controller",
            "heat, flat cables, complete and clean",
            "orrin-c4-stick-unit"),
    HURRIED(
            "The same, by a hurried writer",
            "faults to find, what the checks are for",
            "orrin-c4-stick-unit-hurried");

    private final String title;
    private final String about;
    private final String baseName;

    Sample(String title, String about, String baseName) {
        this.title = title;
        this.about = about;
        this.baseName = baseName;
    }

    /** The words in the menu. */
    public String title() {
        return title;
    }

    /** What there is to see in it, in a few words. */
    String about() {
        return about;
    }

    /** What its files are called, without an ending. */
    public String baseName() {
        return baseName;
    }

    /** Reads it out of the jar. */
    public Procedure procedure() {
        return bytes(baseName + ".procedure.json")
                .map(ProcedureReader::read)
                .orElseThrow(() -> new IllegalStateException("not packed: " + baseName));
    }

    /** Its photos. */
    public PhotoFolder photos() {
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
