package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.canvas.StepGraph;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.start.Sample;
import counterstep.editor.theme.Theme;
import counterstep.model.Link;
import counterstep.model.LinkOrigin;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.JList;
import javax.swing.JTextArea;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WorkbenchTest {
    @TempDir private Path folder;

    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private Workbench workbench;
    private Desk desk;
    private FrameFixture frame;

    @BeforeEach
    void open() {
        GuiActionRunner.execute(
                () -> {
                    Theme.LIGHT.show();
                    desk = Desk.of(DocumentWork.blank());
                    workbench = new Workbench(desk);
                });
        frame = new FrameFixture(robot, workbench.frame());
        frame.show();
    }

    @AfterEach
    void close() {
        robot.cleanUp();
    }

    private <T> T ofDesk(Function<Desk, T> answer) {
        robot.waitForIdle();
        return GuiActionRunner.execute(() -> answer.apply(desk));
    }

    private static void until(String what, Supplier<Boolean> holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return holds.get();
                    }
                });
    }

    private void opened(String sample) {
        Path file = Samples.file(sample);
        GuiActionRunner.execute(() -> workbench.openFile(file));
        until("the file lies open", () -> ofDesk(d -> d.state().file().isPresent()));
        until(
                "it is analysed",
                () ->
                        ofDesk(
                                d ->
                                        d.analysis().isPresent()
                                                && d.analysis().get().generation()
                                                        == d.state().generation()));
    }

    private void control(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
    }

    @Test
    void aStepIsAddedNamedUndoneAndRedone() {
        frame.button("Add step").click();
        until(
                "the title can be typed",
                () ->
                        robot.finder()
                                        .findAll(
                                                robot.finder().findByType(StepGraph.class),
                                                each ->
                                                        each instanceof javax.swing.JTextField
                                                                && each.isFocusOwner())
                                        .size()
                                == 1);
        robot.enterText("Lid off");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals("Lid off", ofDesk(d -> d.state().procedure().steps().get(0).title()));
        assertTrue(frame.target().getTitle().startsWith("*"));
        while (ofDesk(d -> d.undoName().isPresent())) {
            frame.button("Undo").click();
        }
        assertEquals(List.of(), ofDesk(d -> d.state().procedure().steps()));
        while (ofDesk(d -> d.redoName().isPresent())) {
            frame.button("Redo").click();
        }
        assertEquals("Lid off", ofDesk(d -> d.state().procedure().steps().get(0).title()));
        frame.button("Add step").click();
        assertEquals(
                List.of(LinkOrigin.AS_TOLD),
                ofDesk(d -> d.state().procedure().links().stream().map(Link::origin).toList()));
    }

    @Test
    void aClickOnAFindingSelectsItsSteps() {
        opened(Samples.HURRIED);
        JList<?> list = frame.list("findings").target();
        int found = ofDesk(d -> d.analysis().orElseThrow().review().findings().size());
        until("all findings are listed", () -> list.getModel().getSize() == found);
        frame.list("findings").clickItem(2);
        Selection selection = ofDesk(d -> d.state().selection());
        List<StepId> steps =
                ofDesk(d -> d.analysis().orElseThrow().review().findings().get(2)).steps();
        assertEquals(Selection.ofSteps(new LinkedHashSet<>(steps)), selection);
    }

    @Test
    void theCounterstepsThatAreMissingAreDrawnAndSelectedInOneUndo() {
        opened(Samples.HURRIED);
        Procedure hurried = ofDesk(d -> d.state().procedure());
        frame.button("Draw counterstep").click();
        Procedure drawn = ofDesk(d -> d.state().procedure());
        assertEquals(hurried.steps().size() + 3, drawn.steps().size());
        Set<StepId> changed =
                drawn.steps().stream()
                        .filter(step -> !hurried.steps().contains(step))
                        .map(Step::id)
                        .collect(Collectors.toSet());
        assertEquals(Selection.ofSteps(changed), ofDesk(d -> d.state().selection()));
        assertEquals(Optional.of("Draw 6 countersteps"), ofDesk(Desk::undoName));
        control(KeyEvent.VK_Z);
        assertEquals(hurried, ofDesk(d -> d.state().procedure()));
    }

    @Test
    void theMissingLinksAreDrawnTogetherInOneUndo() {
        opened(Samples.HURRIED);
        Procedure hurried = ofDesk(d -> d.state().procedure());
        frame.menuItemWithPath("Check", "Draw the missing links…").click();
        DialogFixture dialog = WindowFinder.findDialog("Draw the missing links").using(robot);
        dialog.button("Apply").click();
        assertEquals(Optional.of("Draw link"), ofDesk(Desk::undoName));
        Procedure linked = ofDesk(d -> d.state().procedure());
        assertTrue(
                linked.links().contains(Link.drawn(new StepId("s36"), new StepId("s40"))),
                linked.links().toString());
        control(KeyEvent.VK_Z);
        assertEquals(hurried, ofDesk(d -> d.state().procedure()));
    }

    @Test
    void whereNothingIsMissingItSaysSo() {
        opened(Samples.SUPPLY_FAN);
        control(KeyEvent.VK_R);
        JOptionPaneFixture pane = JOptionPaneFinder.findOptionPane().using(robot);
        JTextArea words = robot.finder().findByType(pane.target(), JTextArea.class);
        assertEquals("All that comes off is put back already.", words.getText());
        pane.okButton().click();
        assertFalse(ofDesk(Desk::unsaved));
    }

    @Test
    void theStatusLineTellsTheTotals() {
        opened(Samples.STICK_UNIT);
        until("the totals are there", () -> frame.label("totals").text().startsWith("58 steps"));
        assertTrue(frame.label("totals").text().contains("38 tool changes"));
    }

    @Test
    void aFileThatCannotBeReadIsToldAndTheWindowStays() throws Exception {
        Path broken = folder.resolve("broken.procedure.json");
        Files.writeString(broken, "{\"format\": \"counterstep procedure\", \"version\": 1,");
        Procedure before = ofDesk(d -> d.state().procedure());
        GuiActionRunner.execute(() -> workbench.openFile(broken));
        JOptionPaneFixture pane = JOptionPaneFinder.findOptionPane().using(robot);
        JTextArea words = robot.finder().findByType(pane.target(), JTextArea.class);
        assertTrue(words.getText().contains("broken.procedure.json"), words::getText);
        assertTrue(words.getText().endsWith("Nothing was opened."), words::getText);
        pane.okButton().click();
        assertEquals(before, ofDesk(d -> d.state().procedure()));
        assertTrue(workbench.frame().isVisible());
    }

    @Test
    void savingWritesTheFileAndTheStarGoes() throws Exception {
        Path file = folder.resolve("orrin.procedure.json");
        Files.copy(Samples.file(Samples.STICK_UNIT), file);
        GuiActionRunner.execute(() -> workbench.openFile(file));
        until("the file lies open", () -> ofDesk(d -> d.state().file().isPresent()));
        frame.textBox("procedure.title").focus().selectAll();
        frame.textBox("procedure.title").enterText("Another title");
        control(KeyEvent.VK_S);
        until("all is saved", () -> ofDesk(d -> !d.unsaved()));
        assertEquals("Another title", ProcedureFile.read(file).titleBlock().title());
        assertFalse(frame.target().getTitle().startsWith("*"));
    }

    @Test
    void closingWithUnsavedWorkAsksAndKeepsTheWindowOpen() {
        frame.textBox("procedure.title").focus().selectAll();
        frame.textBox("procedure.title").enterText("Pump");
        frame.textBox("procedure.title").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        GuiActionRunner.execute(
                () ->
                        javax.swing.SwingUtilities.invokeLater(
                                () ->
                                        workbench
                                                .frame()
                                                .dispatchEvent(
                                                        new java.awt.event.WindowEvent(
                                                                workbench.frame(),
                                                                java.awt.event.WindowEvent
                                                                        .WINDOW_CLOSING))));
        JOptionPaneFixture pane = JOptionPaneFinder.findOptionPane().using(robot);
        pane.buttonWithText("Keep open").click();
        assertTrue(workbench.frame().isVisible());
        assertEquals("Pump", ofDesk(d -> d.state().procedure().titleBlock().title()));
        assertEquals(Optional.empty(), ofDesk(d -> d.state().file()));
    }

    @Test
    void aSampleOpensAsACopyThatTakesItsPhotosAlong() {
        frame.menuItem("File").click();
        frame.menuItem("Open sample").click();
        frame.menuItem("Fan of a bench supply").click();
        until("it lies open", () -> ofDesk(d -> d.state().procedure().steps().size() == 14));
        assertEquals(Optional.empty(), ofDesk(d -> d.state().file()));
        assertFalse(ofDesk(Desk::unsaved));
        control(KeyEvent.VK_S);
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(robot);
        Path file = folder.resolve("fan.procedure.json");
        chooser.fileNameTextBox().setText(file.toString());
        chooser.approve();
        until("it has a file", () -> ofDesk(d -> d.state().file().equals(Optional.of(file))));
        PhotoFolder saved = PhotoFolder.beside(file);
        PhotoFolder packed = Sample.FAN.photos();
        List<Photo> photos = ofDesk(d -> d.state().procedure().photos());
        assertFalse(photos.isEmpty());
        for (Photo photo : photos) {
            assertArrayEquals(
                    packed.bytes(photo.file()).orElseThrow(),
                    saved.bytes(photo.file()).orElseThrow());
        }
    }

    @Test
    void aStepIsMovedAlongThePageByKey() {
        opened(Samples.SUPPLY_FAN);
        StepId third = ofDesk(d -> d.state().procedure().steps().get(2).id());
        GuiActionRunner.execute(() -> desk.select(Selection.of(third)));
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(KeyEvent.VK_UP);
        robot.releaseKey(KeyEvent.VK_ALT);
        assertEquals(third, ofDesk(d -> d.state().procedure().steps().get(1).id()));
        control(KeyEvent.VK_Z);
        assertEquals(third, ofDesk(d -> d.state().procedure().steps().get(2).id()));
    }

    @Test
    void theThemeIsSwitchedLive() {
        control(KeyEvent.VK_D);
        until("dark", () -> GuiActionRunner.execute(() -> Theme.current() == Theme.DARK));
        control(KeyEvent.VK_D);
        until("light", () -> GuiActionRunner.execute(() -> Theme.current() == Theme.LIGHT));
        assertTrue(workbench.frame().isVisible());
    }
}
