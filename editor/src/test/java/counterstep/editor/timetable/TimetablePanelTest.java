package counterstep.editor.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;

final class TimetablePanelTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");

    private static Procedure pump(List<Link> links) {
        return Procedure.titled("pump", "Pump")
                .draft()
                .steps(List.of(step(FIRST, 60), step(SECOND, 30)))
                .links(links)
                .procedure();
    }

    private static Step step(StepId id, int seconds) {
        return Step.titled(id, Phase.TEARDOWN, "Lid off")
                .draft()
                .seconds(OptionalInt.of(seconds))
                .step();
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

    private static Component chart(PanelWindow window) {
        Component[] found = new Component[1];
        until(
                "the bars are drawn",
                () -> {
                    found[0] =
                            window
                                    .frame()
                                    .robot()
                                    .finder()
                                    .findAll(
                                            window.frame().target(),
                                            each ->
                                                    "timetable".equals(each.getName())
                                                            && each.isShowing())
                                    .stream()
                                    .findFirst()
                                    .orElse(null);
                    return found[0] != null && found[0].getHeight() > 60;
                });
        return found[0];
    }

    private static void untilSelected(PanelWindow window, StepId step) {
        until(
                step + " is selected",
                () -> {
                    Selection[] now = new Selection[1];
                    window.onDesk(desk -> now[0] = desk.state().selection());
                    return now[0].equals(Selection.of(step));
                });
    }

    @Test
    void aClickOnABarAndTheArrowKeysSelectAStep() {
        try (PanelWindow window =
                new PanelWindow(pump(List.of(Link.drawn(FIRST, SECOND))), TimetablePanel::new)) {
            Component chart = chart(window);
            window.frame().robot().click(chart, new Point(chart.getWidth() * 5 / 6 - 8, 40));
            untilSelected(window, SECOND);
            assertEquals(
                    "2 Lid off, from 1:00 to 1:30, estimated, critical",
                    GuiActionRunner.execute(
                            () -> chart.getAccessibleContext().getAccessibleDescription()));
            window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_LEFT);
            untilSelected(window, FIRST);
        }
    }

    @Test
    void whatIsNotCriticalSaysByHowMuchItCouldRunLater() {
        try (PanelWindow window = new PanelWindow(pump(List.of()), TimetablePanel::new)) {
            Component chart = chart(window);
            window.onDesk(desk -> desk.select(Selection.of(SECOND)));
            assertEquals(
                    "2 Lid off, from 1:00 to 1:30, estimated, could run later by 0:30",
                    GuiActionRunner.execute(
                            () -> chart.getAccessibleContext().getAccessibleDescription()));
        }
    }

    @Test
    void theWheelWithControlEnlargesAndAKeyFitsTheWidthAgain() {
        try (PanelWindow window = new PanelWindow(pump(List.of()), TimetablePanel::new)) {
            Component chart = chart(window);
            int fitting = chart.getWidth();
            window.frame().robot().moveMouse(chart, new Point(60, 40));
            window.frame().robot().rotateMouseWheel(chart, -3);
            window.frame().robot().waitForIdle();
            assertEquals(fitting, chart.getWidth());
            window.frame().robot().pressKey(KeyEvent.VK_CONTROL);
            window.frame().robot().rotateMouseWheel(chart, -3);
            window.frame().robot().releaseKey(KeyEvent.VK_CONTROL);
            until("it is larger", () -> chart.getWidth() > fitting);
            window.frame().robot().click(chart, new Point(30, 40));
            window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_0);
            until("it fits again", () -> chart.getWidth() == fitting);
        }
    }

    @Test
    void aLoopIsToldInASentence() {
        Procedure looping = pump(List.of(Link.drawn(FIRST, SECOND), Link.drawn(SECOND, FIRST)));
        try (PanelWindow window = new PanelWindow(looping, TimetablePanel::new)) {
            until(
                    "the sentence is there",
                    () ->
                            window.frame()
                                    .label("timetable sentence")
                                    .text()
                                    .startsWith("The links"));
            assertTrue(
                    window.frame().label("timetable sentence").text().contains("steps 1, 2"),
                    () -> window.frame().label("timetable sentence").text());
        }
    }
}
