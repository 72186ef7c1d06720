package counterstep.editor.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.ThreadKind;
import counterstep.model.Verb;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javax.swing.JSlider;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class BenchPanelTest {
    private final PanelWindow window = new PanelWindow(pump(), BenchPanel::new);

    private static FastenerSet screws(String id, double length) {
        return new FastenerSet(
                new ItemId(id),
                id + " screws",
                2,
                FastenerForm.SCREW,
                Optional.of(new Drive(DriveKind.HEXALOBULAR, "5")),
                Head.PAN,
                Optional.of(new ScrewThread(ThreadKind.METRIC, 1.6, OptionalDouble.empty())),
                OptionalDouble.of(length),
                "",
                Seat.UNKNOWN,
                Optional.empty(),
                "",
                "",
                false,
                false,
                "",
                "",
                Extras.NONE);
    }

    private static Step step(String id, Phase phase, Verb verb, String set) {
        return Step.titled(new StepId(id), phase, id)
                .draft()
                .actions(List.of(Action.of(verb, new ItemId(set), 2)))
                .step();
    }

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .items(List.of(screws("f1", 3.5), screws("f2", 4)))
                .steps(
                        List.of(
                                step("s1", Phase.TEARDOWN, Verb.REMOVE, "f1"),
                                step("s2", Phase.TEARDOWN, Verb.REMOVE, "f2"),
                                step("s3", Phase.REASSEMBLY, Verb.REINSTALL, "f2"),
                                step("s4", Phase.REASSEMBLY, Verb.REINSTALL, "f1")))
                .procedure();
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

    private JSlider slider() {
        return window.frame().slider("bench step").target();
    }

    @BeforeEach
    void untilTheBenchIsLaidOut() {
        JSlider[] found = new JSlider[1];
        until(
                "the slider is there",
                () -> {
                    found[0] = slider(window.frame().target());
                    return found[0].isShowing() && found[0].getMaximum() == 4;
                });
    }

    private static JSlider slider(Container in) {
        for (Component each : in.getComponents()) {
            if (each instanceof JSlider slider) {
                return slider;
            }
            if (each instanceof Container inner && slider(inner) != null) {
                return slider(inner);
            }
        }
        return null; // none in here
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void untilSelected(String step) {
        Selection wanted = Selection.of(new StepId(step));
        until(
                step + " is selected",
                () -> {
                    Selection[] now = new Selection[1];
                    window.onDesk(desk -> now[0] = desk.state().selection());
                    return now[0].equals(wanted);
                });
    }

    @Test
    void theArrowKeysMoveAlongTheStepsAndSelectThem() {
        window.frame().slider("bench step").focus();
        window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT);
        untilSelected("s2");
        window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_END);
        untilSelected("s4");
    }

    @Test
    void aClickOnTheTrackSelectsTheStepThere() {
        JSlider slider = slider();
        window.frame().robot().click(slider, new Point(slider.getWidth() - 14, 14));
        untilSelected("s4");
    }

    @Test
    void lookAlikesThatLieOnTheMatTogetherAreBracketed() {
        window.onDesk(desk -> desk.select(Selection.of(new StepId("s2"))));
        assertEquals(
                "look-alikes, 3.5 and 4 mm",
                window.frame()
                        .robot()
                        .finder()
                        .find(window.frame().target(), each -> "look-alikes".equals(each.getName()))
                        .getAccessibleContext()
                        .getAccessibleName());
    }

    @Test
    void aHiddenBenchIsNotLaidOutUntilItIsShown() {
        JSlider slider = slider();
        Container panel = slider.getParent().getParent().getParent();
        GuiActionRunner.execute(() -> panel.setVisible(false));
        window.onDesk(desk -> desk.select(Selection.of(new StepId("s3"))));
        assertEquals(1, GuiActionRunner.execute(slider::getValue));
        GuiActionRunner.execute(() -> panel.setVisible(true));
        until("it follows the selection", () -> slider.getValue() == 3);
    }
}
