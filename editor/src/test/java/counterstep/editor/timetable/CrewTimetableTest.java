package counterstep.editor.timetable;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Crew;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeSource;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;

final class CrewTimetableTest {
    private static final StepId LID = new StepId("s1");
    private static final StepId PUMP = new StepId("s2");

    private static Procedure pump(String secondPerson) {
        return Procedure.titled("pump", "Pump")
                .draft()
                .steps(List.of(step(LID, 60, ""), step(PUMP, 30, secondPerson)))
                .procedure();
    }

    private static Step step(StepId id, int seconds, String secondPerson) {
        return Step.titled(id, Phase.TEARDOWN, "Lid off")
                .draft()
                .seconds(OptionalInt.of(seconds))
                .timeSource(TimeSource.MEASURED)
                .secondPerson(secondPerson)
                .step();
    }

    /** The panel with its controls above it. */
    private static DeskPanel withControls(Desk desk) {
        TimetablePanel panel = new TimetablePanel(desk);
        JPanel whole = new JPanel(new BorderLayout());
        whole.add(panel.tabControls().orElseThrow(), BorderLayout.NORTH);
        whole.add(panel.component(), BorderLayout.CENTER);
        return new DeskPanel() {
            @Override
            public String title() {
                return panel.title();
            }

            @Override
            public JComponent component() {
                return whole;
            }
        };
    }

    private static void untilSaid(PanelWindow window, String label, String words) {
        Pause.pause(
                new Condition(label + " says " + words) {
                    @Override
                    public boolean test() {
                        return said(window, label).equals(words);
                    }
                });
    }

    private static String said(PanelWindow window, String label) {
        return onEventThread(
                () -> found(window, label) instanceof JLabel found ? found.getText() : "");
    }

    private static Component found(PanelWindow window, String name) {
        return window.frame()
                .robot()
                .finder()
                .find(window.frame().target(), each -> name.equals(each.getName()));
    }

    private static <T> T onEventThread(Supplier<T> ask) {
        return GuiActionRunner.execute(ask::get);
    }

    private static void choose(PanelWindow window, String box, int item) {
        window.frame().comboBox(box).selectItem(item);
    }

    @Test
    void theWriterSetsTheCrewAndSeesWhoDoesWhat() {
        try (PanelWindow window = new PanelWindow(pump(""), CrewTimetableTest::withControls)) {
            untilSaid(
                    window,
                    "timetable summary",
                    "one person 1:30 without tool changes; critical path 1:00: no crew is faster");
            choose(window, "timetable crew", 2);
            assertEquals(new Crew(2, false), window.procedure().crew());
            choose(window, "timetable order", 1);
            untilSaid(
                    window,
                    "timetable summary",
                    "1:00, the shortest possible, proved; in page order 1:00; critical path 1:00");
            window.onDesk(desk -> desk.select(Selection.of(PUMP)));
            assertEquals(
                    "2 Lid off, technician 2, from 0:00 to 0:30, measured",
                    onEventThread(
                            () ->
                                    found(window, "timetable")
                                            .getAccessibleContext()
                                            .getAccessibleDescription()));
            window.onDesk(Desk::undo);
            assertEquals(Crew.ONE, window.procedure().crew());
            untilSaid(
                    window,
                    "timetable summary",
                    "1:30, the shortest possible, proved; in page order 1:30; critical path 1:00");
        }
    }

    @Test
    void toolChangesWithinAStepAreCountedToo() {
        Procedure fan = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));
        try (PanelWindow window = new PanelWindow(fan, CrewTimetableTest::withControls)) {
            choose(window, "timetable order", 1);
            untilSaid(
                    window,
                    "timetable summary",
                    "24:23, the shortest possible, proved, 2:40 of it estimated;"
                            + " in page order 24:23;"
                            + " 10 tool changes, 0:42; critical path 23:20");
        }
    }

    @Test
    void whereNobodyIsLeftToHoldTheStepsAreNamed() {
        Procedure heavy = pump("lifts the lid");
        try (PanelWindow window = new PanelWindow(heavy, CrewTimetableTest::withControls)) {
            choose(window, "timetable order", 1);
            untilSaid(
                    window,
                    "timetable sentence",
                    "One technician alone cannot do it: somebody has to hold or lift in step 2. Choose another crew.");
        }
    }
}
