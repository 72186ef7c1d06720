package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.testing.AnyProcedure;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class JournalTest {
    @TempDir private Path folder;

    private final Procedure work = AnyProcedure.of(1);

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void whatWasKeptIsFoundOnceItsWindowIsGone() {
        Path file = folder.resolve("pump.procedure.json").toAbsolutePath();
        Path kept = folder.resolve("kept");
        Journal journal = Journal.in(kept);
        journal.keep(work, Optional.of(file), PhotoFolder.none());
        assertEquals(List.of(), Kept.in(kept), "its window lives");
        journal.leave();
        List<Kept> left = Kept.in(kept);
        assertEquals(List.of(work), left.stream().map(Kept::procedure).toList());
        assertEquals(Optional.of(file), left.get(0).file());
        assertEquals(List.of(), Kept.in(kept), "who found it holds it");
        left.get(0).journal().leave();
    }

    @Test
    void closingLeavesNothing() throws IOException {
        Journal journal = Journal.in(folder);
        journal.keep(work, Optional.empty(), PhotoFolder.none());
        journal.close();
        assertEquals(List.of(), files());
    }

    @Test
    void whatWasClearedIsNotFound() {
        Journal journal = Journal.in(folder);
        journal.keep(work, Optional.empty(), PhotoFolder.none());
        journal.clear();
        journal.leave();
        assertEquals(List.of(), Kept.in(folder));
    }

    @Test
    void aDocumentWithAFileKeepsThePhotosThatAreNotBesideItYet() {
        Path sample = Samples.file(Samples.SUPPLY_FAN);
        Procedure fan = ProcedureFile.read(sample);
        String added = fan.photos().get(0).file();
        PhotoFolder atRisk =
                PhotoFolder.of(
                        name -> Optional.of(new byte[] {7}).filter(bytes -> name.equals(added)));
        Journal journal = Journal.in(folder);
        journal.keep(fan, Optional.of(sample), atRisk);
        journal.leave();
        Kept left = Kept.in(folder).get(0);
        left.journal().close();
        assertArrayEquals(new byte[] {7}, left.photos().bytes(added).orElseThrow());
        assertEquals(Optional.empty(), left.photos().bytes(fan.photos().get(1).file()));
    }

    @Test
    void aDocumentWithoutAFileKeepsItsPhotos() throws IOException {
        Path sample = Samples.file(Samples.SUPPLY_FAN);
        Procedure fan = ProcedureFile.read(sample);
        PhotoFolder photos = PhotoFolder.beside(sample);
        Journal journal = Journal.in(folder);
        journal.keep(fan, Optional.empty(), photos);
        journal.leave();
        Kept left = Kept.in(folder).get(0);
        assertTrue(!fan.photos().isEmpty());
        for (Photo photo : fan.photos()) {
            assertArrayEquals(
                    photos.bytes(photo.file()).orElseThrow(),
                    left.photos().bytes(photo.file()).orElseThrow());
        }
        left.journal().close();
        assertEquals(List.of(), files());
    }

    @Test
    void whatCannotBeReadStaysAndIsInNobodysWay() throws IOException {
        Path broken = folder.resolve("a.procedure.json");
        Files.writeString(broken, "{");
        Files.writeString(folder.resolve("a.origin"), "");
        Journal journal = Journal.in(folder);
        journal.keep(work, Optional.empty(), PhotoFolder.none());
        journal.leave();
        List<Kept> left = Kept.in(folder);
        assertEquals(List.of(work), left.stream().map(Kept::procedure).toList());
        assertTrue(Files.exists(broken));
        left.get(0).journal().leave();
    }

    @Test
    void aProgramKilledWhileItKeepsLeavesTheWorkWholeAndTheFileUntouched() throws Exception {
        Path file = folder.resolve("pump.procedure.json").toAbsolutePath();
        Path kept = folder.resolve("kept");
        ProcedureFile.write(file, AnyProcedure.of(3));
        byte[] before = Files.readAllBytes(file);
        Set<Procedure> whole = Set.of(AnyProcedure.of(1), AnyProcedure.of(2));
        for (int kill = 0; kill < 3; kill++) {
            Process keeping = keeping(kept, file);
            assertEquals('k', keeping.getInputStream().read(), "it began to keep");
            assertEquals(List.of(), Kept.in(kept), "it lives");
            keeping.waitFor(20 + 37L * kill, TimeUnit.MILLISECONDS);
            keeping.destroyForcibly().waitFor();
            List<Kept> left = Kept.in(kept);
            assertEquals(1, left.size());
            assertTrue(whole.contains(left.get(0).procedure()));
            assertEquals(Optional.of(file), left.get(0).file());
            assertArrayEquals(before, Files.readAllBytes(file));
            left.get(0).journal().close();
        }
    }

    private static Process keeping(Path kept, Path file) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        KeepsForEver.class.getName(),
                        kept.toString(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Keeps one document and another in turn until it is killed; a program of its own. */
    static final class KeepsForEver {
        private KeepsForEver() {}

        public static void main(String[] arguments) {
            Journal journal = Journal.in(Path.of(arguments[0]));
            Optional<Path> file = Optional.of(Path.of(arguments[1]));
            journal.keep(AnyProcedure.of(2), file, PhotoFolder.none());
            System.out.println("keeping");
            while (true) {
                journal.keep(AnyProcedure.of(1), file, PhotoFolder.none());
                journal.keep(AnyProcedure.of(2), file, PhotoFolder.none());
            }
        }
    }
}
