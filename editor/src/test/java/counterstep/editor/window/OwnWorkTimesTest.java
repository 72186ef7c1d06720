package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.handbook.WorkTimes;
import counterstep.store.WorkTimesFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own figures are kept in the folder of the program, and changed in a dialog. */
final class OwnWorkTimesTest {
    @TempDir private Path folder;

    private Path own;
    private StartedWindow window;

    @BeforeEach
    void open() throws IOException {
        own = Files.createDirectories(folder.resolve("data")).resolve("work-times.csv");
        Files.writeString(own, "check;12;0\n");
        window =
                new StartedWindow(
                        new PreferencesInMemory(), folder.resolve("data"), Optional.empty());
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private String source() {
        return window.ofDesk(
                desk ->
                        desk.analysis()
                                .map(Analysis::timing)
                                .map(timing -> timing.estimates().source())
                                .orElse(""));
    }

    @Test
    void figuresThatAreKeptAreUsedAndCanBeChanged() {
        until("the kept figures are used", () -> source().endsWith(WorkTimes.OWN));
        JTextArea lines = dialog();
        assertEquals("check;12;0\n", StartedWindow.on(lines::getText));

        answer(lines, "");

        until("the published figures are used", () -> source().equals(WorkTimes.PUBLISHED));
        assertEquals("", WorkTimesFile.text(own));
    }

    private JTextArea dialog() {
        SwingUtilities.invokeLater(window.frame.menuItem("Own work times…").target()::doClick);
        JOptionPaneFixture pane = JOptionPaneFinder.findOptionPane().using(window.robot);
        return window.robot.finder().findByName(pane.target(), "own work times", JTextArea.class);
    }

    private String note() {
        return window
                .robot
                .finder()
                .findAll(each -> "own work times note".equals(each.getName()) && each.isShowing())
                .stream()
                .map(JLabel.class::cast)
                .map(JLabel::getText)
                .findFirst()
                .orElse("");
    }

    private void answer(JTextArea lines, String text) {
        StartedWindow.on(
                () -> {
                    lines.setText(text);
                    return text;
                });
        JOptionPaneFinder.findOptionPane().using(window.robot).okButton().click();
    }

    @Test
    void aLineThatIsNoFigureIsToldAndTheOldFiguresStay() {
        JTextArea lines = dialog();

        answer(lines, "soon");

        until("it is told", () -> note().startsWith("line 1: no figure"));
        JOptionPaneFinder.findOptionPane().using(window.robot).buttonWithText("Cancel").click();
        assertEquals("check;12;0\n", WorkTimesFile.text(own));
        assertTrue(source().endsWith(WorkTimes.OWN));
    }
}
