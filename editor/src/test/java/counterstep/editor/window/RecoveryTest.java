package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.SetTitleBlock;
import counterstep.editor.desk.Desk;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.model.Procedure;
import counterstep.model.TitleBlock;
import counterstep.store.Journal;
import counterstep.store.Kept;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class RecoveryTest {
    @TempDir private Path folder;

    private StartedWindow window;
    private Path file;
    private Path journals;

    @BeforeEach
    void copyASample() throws IOException {
        journals = folder.resolve("data/kept");
        file = folder.resolve("fan.procedure.json");
        Files.copy(Samples.file(Samples.SUPPLY_FAN), file);
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private void start(Optional<Path> named) {
        window = new StartedWindow(new PreferencesInMemory(), folder.resolve("data"), named);
    }

    private boolean workIsKept() {
        return kept().anyMatch(name -> name.endsWith(".procedure.json"));
    }

    private Stream<String> kept() {
        try (Stream<Path> files = Files.list(journals)) {
            return files.map(each -> each.getFileName().toString()).toList().stream();
        } catch (IOException notThere) {
            return Stream.empty();
        }
    }

    private void leftBehind(String title) {
        Procedure fan = ProcedureFile.read(file);
        TitleBlock old = fan.titleBlock();
        Procedure changed =
                new SetTitleBlock(
                                new TitleBlock(
                                        title,
                                        old.device(),
                                        old.summary(),
                                        old.language(),
                                        old.skill(),
                                        old.conditions(),
                                        old.cautions()))
                        .apply(fan);
        Journal journal = Journal.in(journals);
        journal.keep(changed, Optional.of(file), PhotoFolder.none());
        journal.leave();
    }

    private String title() {
        return window.ofDesk(desk -> desk.state().procedure().titleBlock().title());
    }

    @Test
    void workIsKeptSomeSecondsAfterAnEditAndNotBesideTheFile() throws Exception {
        byte[] before = Files.readAllBytes(file);
        start(Optional.of(file));
        window.untilOpen(file);
        assertEquals(false, window.waits());
        window.retitle("Pump");
        assertEquals(false, workIsKept());
        window.someSecondsPass();
        until("it is kept", this::workIsKept);
        assertArrayEquals(before, Files.readAllBytes(file));
        try (Stream<Path> beside = Files.list(folder)) {
            assertEquals(
                    List.of("data", "fan.procedure.json"),
                    beside.map(each -> each.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void whatIsSavedIsKeptNoLonger() {
        start(Optional.of(file));
        window.untilOpen(file);
        window.retitle("Pump");
        window.someSecondsPass();
        until("it is kept", this::workIsKept);
        window.control(KeyEvent.VK_S);
        until("it is let go", () -> !workIsKept());
        assertEquals("Pump", ProcedureFile.read(file).titleBlock().title());
    }

    @Test
    void whatIsDiscardedOnClosingIsKeptNoLonger() {
        start(Optional.of(file));
        window.untilOpen(file);
        window.retitle("Pump");
        window.someSecondsPass();
        until("it is kept", this::workIsKept);
        window.close();
        window.answer("Discard");
        window.untilClosed();
        until("nothing is left", () -> kept().findAny().isEmpty());
    }

    @Test
    void afterACrashTheWorkIsOfferedAndOpenedUnsaved() {
        leftBehind("Pump");
        start(Optional.empty());
        String asked = window.answer("Open");
        assertTrue(asked.startsWith("Counterstep was not closed properly."), asked);
        assertTrue(asked.contains("'Pump'"), asked);
        window.untilOpen(file);
        assertEquals("Pump", title());
        assertTrue(window.ofDesk(Desk::unsaved));
        assertTrue(workIsKept(), "it stays kept until it is saved");
        window.control(KeyEvent.VK_S);
        until("it is let go", () -> !workIsKept());
        assertEquals("Pump", ProcedureFile.read(file).titleBlock().title());
    }

    @Test
    void whatIsDiscardedIsGoneAndTheNamedFileOpens() {
        leftBehind("Pump");
        String before = ProcedureFile.read(file).titleBlock().title();
        start(Optional.of(file));
        window.answer("Discard");
        window.untilOpen(file);
        assertEquals(before, title());
        until("nothing is left", () -> kept().findAny().isEmpty());
    }

    @Test
    void whatIsLeftForLaterIsOfferedAgain() {
        leftBehind("Pump");
        start(Optional.empty());
        window.answer("Later");
        until("nobody holds it", () -> holds() == 1);
    }

    private int holds() {
        List<Kept> left = Kept.in(journals);
        left.forEach(each -> each.journal().leave());
        return left.size();
    }
}
