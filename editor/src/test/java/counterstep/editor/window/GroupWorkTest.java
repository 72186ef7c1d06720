package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Selection;
import counterstep.model.GroupRule;
import counterstep.model.OrderRule;
import counterstep.model.Procedure;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every order has to keep is asked for by key and menu, and dropped again. */
final class GroupWorkTest {
    private static final StepId FIRST = new StepId("s6");
    private static final StepId NEXT = new StepId("s7");

    @TempDir private Path folder;

    private StartedWindow window;

    @BeforeEach
    void open() {
        window = StartedWindow.showing(folder, Samples.SUPPLY_FAN);
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private Procedure procedure() {
        return window.ofDesk(desk -> desk.state().procedure());
    }

    private List<GroupRule> rules() {
        return procedure().groups().stream().map(StepGroup::rule).toList();
    }

    private void select(StepId... steps) {
        on(
                () -> {
                    window.desk.select(new Selection(Set.of(steps), Set.of(), Set.of()));
                    return true;
                });
        window.robot.waitForIdle();
    }

    private void controlAndShift(int key) {
        window.robot.pressKey(KeyEvent.VK_SHIFT);
        window.control(key);
        window.robot.releaseKey(KeyEvent.VK_SHIFT);
        window.robot.waitForIdle();
    }

    @Test
    void stepsAreKeptTogetherThenRightAfterEachOtherThenFreeAgain() {
        Procedure before = procedure();
        select(FIRST, NEXT);
        controlAndShift(KeyEvent.VK_T);
        until("they are together", () -> rules().equals(List.of(GroupRule.TOGETHER)));
        assertEquals(List.of(FIRST, NEXT), List.copyOf(procedure().groups().get(0).steps()));
        controlAndShift(KeyEvent.VK_N);
        until("one follows the other", () -> rules().equals(List.of(GroupRule.RIGHT_AFTER)));
        controlAndShift(KeyEvent.VK_X);
        until("they are free", () -> rules().isEmpty());
        assertEquals(before, procedure());
        window.control(KeyEvent.VK_Z);
        until("they are back", () -> rules().equals(List.of(GroupRule.RIGHT_AFTER)));
    }

    @Test
    void oneStepAloneIsNoGroupAndTheStatusLineSaysSo() {
        Procedure before = procedure();
        select(FIRST);
        controlAndShift(KeyEvent.VK_T);
        assertTrue(window.answer("OK").contains("two or more steps"));
        assertEquals(before, procedure());
    }

    @Test
    void aRuleOfTheWholeIsAskedForAndDroppedInThePlanMenu() {
        window.frame.menuItemWithPath("Plan", "Keep phases in order").click();
        until(
                "the rule is kept",
                () -> procedure().orderRules().equals(List.of(OrderRule.PHASES_IN_ORDER)));
        window.frame.menuItemWithPath("Plan", "Let phases mix").click();
        until("the rule is dropped", () -> procedure().orderRules().isEmpty());
    }
}
