package counterstep.editor.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Phase;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JList;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

final class FindingsPanelTest {
    private final PanelWindow window =
            new PanelWindow(
                    Sketch.of()
                            .screws("f1", 2)
                            .connectors("c2", 1)
                            .steps("remove f1", "disconnect c2")
                            .phase(Phase.VERIFY)
                            .step("check")
                            .procedure(),
                    FindingsPanel::new);

    @AfterEach
    void close() {
        window.close();
    }

    private static void until(String what, Supplier<Boolean> holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(holds::get);
                    }
                });
    }

    /** The list, once it shows both faults. */
    private JList<?> list() {
        until("both are listed", () -> listed(window.frame().target()) == 2);
        return window.frame().list("findings").target();
    }

    private static int listed(Container in) {
        return Stream.of(in.getComponents())
                .mapToInt(
                        each ->
                                each instanceof JList<?> list
                                        ? list.getModel().getSize()
                                        : each instanceof Container inner ? listed(inner) : 0)
                .sum();
    }

    private Selection selection() {
        Selection[] selection = new Selection[1];
        window.onDesk(desk -> selection[0] = desk.state().selection());
        return selection[0];
    }

    @Test
    void choosingAFindingSelectsItsPlaceByMouseAndByKey() {
        list();
        window.frame().list("findings").clickItem(0);
        assertEquals(Selection.of(new StepId("s1")), selection());
        window.frame().list("findings").pressAndReleaseKeys(KeyEvent.VK_DOWN);
        assertEquals(Selection.of(new StepId("s2")), selection());
    }

    @Test
    void anEmptyListSaysThatNothingIsWrong() {
        JList<?> list = list();
        window.onDesk(
                desk ->
                        desk.opened(
                                Sketch.of().step("check").procedure(), java.util.Optional.empty()));
        until("nothing is listed", () -> list.getModel().getSize() == 0);
        window.frame()
                .label("nothing found")
                .requireText("Nothing found: every removal has its reinstall in page order.");
    }
}
