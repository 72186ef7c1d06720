package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.model.Procedure;
import counterstep.testing.AnyProcedure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir Path folder;

    @Test
    void aFailureWhileWritingLeavesTheOldFileWholeAndNothingBesideIt() throws IOException {
        Path file = folder.resolve("guide.html");
        WholeFile.put(file, out -> out.write("old".getBytes(StandardCharsets.UTF_8)));
        assertThrows(
                IOException.class,
                () ->
                        WholeFile.put(
                                file,
                                out -> {
                                    out.write("ne".getBytes(StandardCharsets.UTF_8));
                                    throw new IOException("the disk is full");
                                }));
        assertEquals("old", Files.readString(file));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void aProgramKilledWhileItSavesLeavesTheOldOrTheNewFile() throws Exception {
        Path file = folder.resolve("pump.procedure.json");
        Set<Procedure> whole = Set.of(AnyProcedure.of(1), AnyProcedure.of(2));
        ProcedureFile.write(file, AnyProcedure.of(1));
        for (int kill = 0; kill < 3; kill++) {
            Process saving =
                    new ProcessBuilder(
                                    Path.of(System.getProperty("java.home"), "bin", "java")
                                            .toString(),
                                    "-cp",
                                    System.getProperty("java.class.path"),
                                    SavesForEver.class.getName(),
                                    file.toString())
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            assertEquals('s', saving.getInputStream().read(), "it began to save");
            saving.waitFor(20 + 37L * kill, TimeUnit.MILLISECONDS);
            saving.destroyForcibly().waitFor();
            assertEquals(true, whole.contains(ProcedureFile.read(file)));
        }
    }

    /** Saves one document and another in turn until it is killed; a program of its own. */
    static final class SavesForEver {
        private SavesForEver() {}

        public static void main(String[] arguments) {
            Path file = Path.of(arguments[0]);
            ProcedureFile.write(file, AnyProcedure.of(2));
            System.out.println("saving");
            while (true) {
                ProcedureFile.write(file, AnyProcedure.of(1));
                ProcedureFile.write(file, AnyProcedure.of(2));
            }
        }
    }
}
