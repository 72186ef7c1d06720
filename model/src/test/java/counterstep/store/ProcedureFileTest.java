package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import counterstep.model.Procedure;
import counterstep.testing.AnyProcedure;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProcedureFileTest {
    @TempDir Path folder;

    private Path file() {
        return folder.resolve("pump.procedure.json");
    }

    private String refusal(Path file) {
        return assertThrows(BadInput.class, () -> ProcedureFile.read(file)).getMessage();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatIsWrittenIsReadAndNothingElseIsLeft() throws IOException {
        Procedure procedure = AnyProcedure.of(1);
        ProcedureFile.write(file(), AnyProcedure.of(0));
        ProcedureFile.write(file(), procedure);
        assertEquals(procedure, ProcedureFile.read(file()));
        assertEquals(List.of("pump.procedure.json"), names());
    }

    @Test
    void aNewFileNeverTakesThePlaceOfAnother() throws IOException {
        ProcedureFile.writeNew(file(), AnyProcedure.of(0));
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("nowhere"));
        for (Path taken : List.of(file(), link, folder)) {
            BadInput refused =
                    assertThrows(
                            BadInput.class,
                            () -> ProcedureFile.writeNew(taken, AnyProcedure.of(1)));
            assertTrue(refused.getMessage().contains("is there already; name another file"));
        }
        assertEquals(AnyProcedure.of(0), ProcedureFile.read(file()));
        assertEquals(List.of("link", "pump.procedure.json"), names());
    }

    @ParameterizedTest
    @MethodSource("counterstep.testing.Samples#names")
    void everySampleIsReadAndSavedTheSame(String name) {
        Procedure sample = ProcedureFile.read(Samples.file(name));
        ProcedureFile.write(file(), sample);
        assertEquals(sample, ProcedureFile.read(file()));
    }

    @Test
    void aMissingFileIsToldWithItsFolder() {
        assertEquals(
                "pump.procedure.json: there is no such file in " + folder.toAbsolutePath(),
                refusal(file()));
    }

    @Test
    void aFolderIsToldToBeOne() {
        assertEquals(
                folder.getFileName() + ": a folder, no file; name a file in it", refusal(folder));
    }

    @Test
    void aFaultInTheFileIsToldWithItsNameInFront() throws IOException {
        Files.writeString(file(), "{\n");
        assertEquals(
                "pump.procedure.json, line 2: the file ends in the middle; it was cut off; take a"
                        + " whole copy of it",
                refusal(file()));
    }

    @Test
    void aHundredMegabytesOfBracketsAreRefusedInTime() throws IOException {
        Files.writeString(file(), "[".repeat(100_000_000));
        assertEquals(
                "pump.procedure.json: more than 64 MiB; a procedure is far shorter",
                assertTimeoutPreemptively(Duration.ofSeconds(5), () -> refusal(file())));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "no such device there")
    void aDeviceWithoutEndIsRefused() {
        assertEquals(
                "zero: no plain file; copy what it gives into one", refusal(Path.of("/dev/zero")));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "other permissions there")
    void permissionsStay() throws IOException {
        ProcedureFile.write(file(), AnyProcedure.of(0));
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-rw-r--"));
        ProcedureFile.write(file(), AnyProcedure.of(1));
        assertEquals(
                "rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file())));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "links need rights there")
    void aSymbolicLinkStaysAndItsTargetIsReplaced() throws IOException {
        Path target = Files.createDirectory(folder.resolve("shared")).resolve("real.json");
        ProcedureFile.write(target, AnyProcedure.of(0));
        Files.createSymbolicLink(file(), Path.of("shared", "real.json"));
        ProcedureFile.write(file(), AnyProcedure.of(1));
        assertTrue(Files.isSymbolicLink(file()));
        assertEquals(AnyProcedure.of(1), ProcedureFile.read(target));
    }

    @Test
    void aFolderThatIsNotThereIsNotMade() {
        Path lost = folder.resolve("gone").resolve("pump.procedure.json");
        assertEquals(
                "pump.procedure.json: it cannot be written: there is no folder "
                        + lost.getParent().toAbsolutePath(),
                assertThrows(BadInput.class, () -> ProcedureFile.write(lost, AnyProcedure.of(0)))
                        .getMessage());
    }

    @Test
    void theBaseNameHasNoEnding() {
        assertEquals("pump", ProcedureFile.baseName(Path.of("a", "pump.procedure.json")));
        assertEquals("pump", ProcedureFile.baseName(Path.of("pump.json")));
        assertEquals("pump.txt", ProcedureFile.baseName(Path.of("pump.txt")));
    }
}
