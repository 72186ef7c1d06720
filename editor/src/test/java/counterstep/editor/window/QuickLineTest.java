package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.theme.Theme;
import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.store.ProcedureFile;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class QuickLineTest {
    private static final List<String> LINES =
            List.of(
                    "isolate mains",
                    "4 x T5 3.5 lid out; lid off",
                    "unplug fan lead",
                    "fan off",
                    "fan on; plug fan lead in",
                    "lid on; lid screws in");

    @TempDir private Path folder;

    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private Desk desk;
    private FrameFixture frame;

    @BeforeEach
    void open() {
        Workbench workbench =
                GuiActionRunner.execute(
                        () -> {
                            Theme.LIGHT.show();
                            desk = Desk.of(DocumentWork.blank());
                            return new Workbench(desk);
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

    private void control(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }

    private void typeAll() {
        control(KeyEvent.VK_K);
        for (String line : LINES) {
            robot.enterText(line);
            robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        }
        robot.waitForIdle();
    }

    @Test
    void sixLinesTypedFromNothingAreSavedAsAProcedure() {
        typeAll();
        Path file = folder.resolve("lamp.procedure.json");
        control(KeyEvent.VK_S);
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(robot);
        chooser.fileNameTextBox().setText(file.toString());
        chooser.approve();
        Pause.pause(
                new Condition("it is saved") {
                    @Override
                    public boolean test() {
                        return ofDesk(d -> !d.unsaved());
                    }
                });
        Procedure saved = ProcedureFile.read(file);
        assertEquals(
                List.of(
                        "PREPARE Isolate mains: isolate 1 mains",
                        "TEARDOWN Lid screws out, lid off: remove 4 lid screws, remove 1 lid",
                        "TEARDOWN Unplug fan lead: disconnect 1 fan lead",
                        "TEARDOWN Fan off: remove 1 fan",
                        "REASSEMBLY Fan on, plug fan lead in: reinstall 1 fan,"
                                + " reconnect 1 fan lead",
                        "REASSEMBLY Lid on, lid screws in: reinstall 1 lid,"
                                + " reinstall 4 lid screws"),
                saved.steps().stream().map(step -> said(saved, step)).toList());
        assertEquals(
                List.of("mains", "lid screws", "lid", "fan lead", "fan"),
                saved.items().stream().map(Item::name).toList());
        assertEquals(5, saved.links().size());
        assertEquals(
                List.of(LinkOrigin.AS_TOLD),
                saved.links().stream().map(link -> link.origin()).distinct().toList());
    }

    private static String said(Procedure procedure, Step step) {
        Phase phase = step.phase();
        return phase.name()
                + " "
                + step.title()
                + ": "
                + String.join(
                        ", ", step.actions().stream().map(each -> said(procedure, each)).toList());
    }

    private static String said(Procedure procedure, Action action) {
        return action.verb().word()
                + " "
                + action.count()
                + " "
                + procedure.item(action.item().orElseThrow()).name();
    }

    @Test
    void eachLineIsOneUndoAndTheNewStepIsSelected() {
        typeAll();
        Procedure typed = ofDesk(d -> d.state().procedure());
        assertEquals(Selection.of(typed.steps().get(5).id()), ofDesk(d -> d.state().selection()));
        for (int left = LINES.size(); left > 0; left--) {
            assertEquals(Optional.of("Add step"), ofDesk(Desk::undoName));
            List<Step> steps = ofDesk(d -> d.state().procedure().steps());
            assertEquals(left, steps.size());
            control(KeyEvent.VK_Z);
        }
        assertEquals(DocumentWork.blank(), ofDesk(d -> d.state().procedure()));
        for (int redone = 0; redone < LINES.size(); redone++) {
            control(KeyEvent.VK_Y);
        }
        assertEquals(typed, ofDesk(d -> d.state().procedure()));
    }

    @Test
    void whatWasTypedInARowIsDrawnBackByOneKey() {
        control(KeyEvent.VK_K);
        for (String line : LINES.subList(1, 4)) {
            robot.enterText(line);
            robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        }
        control(KeyEvent.VK_R);
        assertEquals(
                List.of(
                        "Lid screws out, lid off",
                        "Unplug fan lead",
                        "Fan off",
                        "Fan on",
                        "Fan lead on",
                        "Lid on"),
                titles());
        int chosen = ofDesk(d -> d.state().selection().steps().size());
        assertEquals(3, chosen, "what was drawn");
    }

    @Test
    void whoChoosesAStepMeanwhileDrawsBackThatOne() {
        control(KeyEvent.VK_K);
        for (String line : LINES.subList(1, 4)) {
            robot.enterText(line);
            robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        }
        Step second = ofDesk(d -> d.state().procedure().steps().get(1));
        GuiActionRunner.execute(() -> desk.select(Selection.of(second.id())));
        control(KeyEvent.VK_R);
        assertEquals(4, titles().size(), () -> titles().toString());
    }

    private List<String> titles() {
        return ofDesk(d -> d.state().procedure().steps().stream().map(Step::title).toList());
    }

    @Test
    void escapeGoesBackToTheGraph() {
        control(KeyEvent.VK_K);
        frame.textBox("quick line").requireFocused();
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        Pause.pause(
                new Condition("the graph has the focus") {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(
                                () ->
                                        frame.target().getFocusOwner() != null
                                                && "step graph"
                                                        .equals(
                                                                frame.target()
                                                                        .getFocusOwner()
                                                                        .getName()));
                    }
                });
    }
}
