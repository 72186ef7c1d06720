package counterstep.export;

import counterstep.model.Procedure;
import counterstep.store.OutputFolder;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Prints of samples and of the small lamp that the golden files show. */
public final class Prints {
    private static final Path LAMP =
            Samples.projectFolder()
                    .resolve("exporter/src/test/resources/counterstep/export/lamp.procedure.json");

    private static final Map<String, Print> SAMPLES = new ConcurrentHashMap<>();

    private Prints() {}

    /** A bench lamp with a photo, a lost photo, hazards, a reading, a wait and hostile text. */
    public static Print lamp() {
        return of(LAMP);
    }

    /** A sample; derived once, since its proofs take most of the time that a test of it takes. */
    public static Print sample(String name) {
        return SAMPLES.computeIfAbsent(name, sample -> of(Samples.file(sample)));
    }

    public static Print of(Path file) {
        return Print.of(
                ProcedureFile.baseName(file), ProcedureFile.read(file), PhotoFolder.beside(file));
    }

    public static Print of(Procedure procedure) {
        return Print.of("fixture", procedure, PhotoFolder.none());
    }

    /** What an exporter writes as its main file. */
    public static String text(Exporter exporter, Print print, Path folder) {
        return read(exporter.write(print, OutputFolder.at(folder)).get(0));
    }

    public static String golden(String name) {
        return read(LAMP.resolveSibling(name));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
