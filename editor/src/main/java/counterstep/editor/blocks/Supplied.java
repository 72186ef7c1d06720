package counterstep.editor.blocks;

import counterstep.json.ProcedureReader;
import counterstep.model.Procedure;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The blocks that come with the program. */
final class Supplied {
    private static final List<String> NAMES =
            List.of(
                    "static-precautions",
                    "mains-off",
                    "cell-lead-first",
                    "protective-earth-test",
                    "heat-and-glass",
                    "small-screw-tools");

    private Supplied() {}

    static List<Procedure> blocks() {
        return NAMES.stream().map(Supplied::block).toList();
    }

    private static Procedure block(String name) {
        String file = name + ".procedure.json";
        try (InputStream in = Supplied.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + file);
            }
            return ProcedureReader.read(in.readAllBytes());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
