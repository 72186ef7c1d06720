package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.StepId;
import counterstep.testing.Samples;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Finding a step in the window, by keys. */
final class FindTest {
    @TempDir private Path folder;

    private StartedWindow window;

    @BeforeEach
    void openASample() {
        window = StartedWindow.showing(folder, Samples.SUPPLY_FAN);
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private void find(String words) {
        window.control(KeyEvent.VK_F);
        untilFocused("find");
        window.frame.textBox("find").enterText(words);
    }

    private void untilFocused(String name) {
        until(
                name + " has the focus",
                () ->
                        GuiActionRunner.execute(
                                () ->
                                        Optional.ofNullable(
                                                        window.workbench.frame().getFocusOwner())
                                                .map(Component::getName)
                                                .equals(Optional.of(name))));
    }

    private void selected(int number) {
        until(
                "step " + number + " is selected",
                () ->
                        window.ofDesk(
                                        desk ->
                                                desk.state()
                                                        .selection()
                                                        .onlyStep()
                                                        .map(this::numberOf))
                                .equals(Optional.of(number)));
    }

    private int numberOf(StepId step) {
        return window.desk.state().procedure().pageNumber(step);
    }

    private boolean barIsSeen() {
        return !window.robot
                .finder()
                .findAll(
                        new GenericTypeMatcher<Component>(Component.class, true) {
                            @Override
                            protected boolean isMatching(Component each) {
                                return "find bar".equals(each.getName());
                            }
                        })
                .isEmpty();
    }

    @Test
    void wordsLeadFromStepToStepAndAroundTheEnd() {
        assertEquals(false, barIsSeen());
        find("cable tie");
        selected(7);
        window.frame.label("found").requireText("1 of 2");
        window.robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        selected(11);
        window.frame.label("found").requireText("2 of 2");
        window.robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        selected(7);
        window.robot.pressAndReleaseKeys(KeyEvent.VK_UP);
        selected(11);
    }

    @Test
    void leavingTheBarGoesBackToTheGraphAndTheSearchGoesOn() {
        find("cable tie");
        selected(7);
        window.robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        untilFocused("step graph");
        assertEquals(false, barIsSeen());
        window.robot.pressAndReleaseKeys(KeyEvent.VK_F3);
        untilFocused("find");
        window.robot.pressAndReleaseKeys(KeyEvent.VK_F3);
        selected(11);
    }
}
