package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import org.assertj.swing.exception.ComponentLookupException;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The export dialog with real mouse and keys. */
final class ExportWorkTest {
    private final PreferencesInMemory memory = new PreferencesInMemory();

    @TempDir private Path folder;
    private StartedWindow window;

    @BeforeEach
    void open() {
        window =
                new StartedWindow(
                        memory,
                        folder.resolve("data"),
                        Optional.of(Samples.file(Samples.SUPPLY_FAN)));
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private DialogFixture asked() {
        window.untilOpen(Samples.file(Samples.SUPPLY_FAN));
        window.frame.button("Export guide").click();
        return WindowFinder.findDialog("Export").withTimeout(30_000).using(window.robot);
    }

    private static void untilShown(DialogFixture dialog, String leaf) {
        until(
                leaf + " is shown",
                () -> {
                    try {
                        dialog.robot().finder().findByName(dialog.target(), leaf);
                        return true;
                    } catch (ComponentLookupException notYet) {
                        return false;
                    }
                });
    }

    @Test
    void whatIsTickedIsShownWrittenAndRememberedForTheNextTime() throws Exception {
        Path to = folder.resolve("out");
        DialogFixture dialog = asked();
        untilShown(dialog, "page 2");
        dialog.checkBox("html").requireSelected();
        dialog.checkBox("csv").click();
        untilShown(dialog, "file 4");
        dialog.comboBox("paper").selectItem("LETTER");
        dialog.textBox("folder").setText(to.toString());
        dialog.button("Write the files").click();
        JOptionPaneFixture told =
                JOptionPaneFinder.findOptionPane().withTimeout(30_000).using(window.robot);
        String words = window.robot.finder().findByType(told.target(), JTextArea.class).getText();
        told.buttonWithText("Close").click();
        List<String> names = words.lines().map(line -> name(Path.of(line))).toList();
        assertTrue(names.contains("bench-supply-fan.guide.html"), words);
        assertTrue(names.contains("bench-supply-fan.guide.pdf"), words);
        assertEquals(4, names.stream().filter(name -> name.endsWith(".csv")).count(), words);
        try (Stream<Path> written = Files.list(to)) {
            assertEquals(names.size(), written.count());
        }
        DialogFixture again = asked();
        again.checkBox("csv").requireSelected();
        again.checkBox("md").requireNotSelected();
        again.comboBox("paper").requireSelection("LETTER");
        again.button("Cancel").click();
    }

    @Test
    void nothingIsWrittenWhereNothingIsTickedOrItIsCancelled() throws Exception {
        DialogFixture dialog = asked();
        dialog.textBox("folder").setText(folder.resolve("out").toString());
        dialog.button("Write the files").requireEnabled();
        dialog.checkBox("html").click();
        dialog.checkBox("pdf").click();
        dialog.button("Write the files").requireDisabled();
        dialog.checkBox("md").click();
        dialog.button("Write the files").requireEnabled();
        dialog.textBox("folder").setText(" ");
        dialog.button("Write the files").requireDisabled();
        dialog.textBox("folder").pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("the dialog is closed", () -> !dialog.target().isShowing());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }
}
