package counterstep.editor.details;

import static org.assertj.swing.timing.Pause.pause;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.ChangeStep;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.testing.Choice;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeRange;
import counterstep.model.TimeSource;
import counterstep.model.Trial;
import counterstep.model.Verb;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JButton;
import javax.swing.JTextArea;
import org.assertj.swing.fixture.JTextComponentFixture;
import org.assertj.swing.timing.Condition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

final class DetailsPanelTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");
    private static final ItemId SCREWS = new ItemId("f3");
    private static final ItemId LID = new ItemId("p4");

    private final PanelWindow window =
            new PanelWindow(
                    pump(), desk -> new DetailsPanel(desk, new PhotoIntake(desk, said -> {})));

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .items(
                        List.of(
                                FastenerSet.screws(SCREWS, "lid screws", 4, Optional.empty()),
                                Part.named(LID, "lid")))
                .steps(
                        List.of(
                                Step.titled(FIRST, Phase.TEARDOWN, "Screws out"),
                                Step.titled(SECOND, Phase.TEARDOWN, "Lid off")))
                .procedure();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void select(Selection selection) {
        window.onDesk(desk -> desk.select(selection));
    }

    private JTextComponentFixture text(String name) {
        return window.frame().textBox(name);
    }

    private void retype(String field, String typed) {
        text(field).focus().selectAll();
        text(field).enterText(typed);
    }

    @Test
    void aTitleIsHandedInOnEnterAndUndoneAsOne() {
        select(Selection.of(FIRST));
        retype("step.title", "Lid screws out");
        text("step.title").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals("Lid screws out", window.procedure().step(FIRST).title());
        window.onDesk(Desk::undo);
        assertEquals("Screws out", window.procedure().step(FIRST).title());
        text("step.title").requireText("Screws out");
    }

    @Test
    void aStepWithoutATimeTellsItsEstimateWithItsSourceAndTakesItAsOneUndo() {
        Action remove = Action.of(Verb.REMOVE, Optional.of(SCREWS), 4);
        Step acting = window.procedure().step(FIRST).draft().actions(List.of(remove)).step();
        window.onDesk(desk -> desk.apply(new ChangeStep(acting, "Change actions")));
        select(Selection.of(FIRST));
        pause(
                new Condition("the estimate is told") {
                    @Override
                    public boolean test() {
                        return estimate().contains("0:38");
                    }
                });
        assertTrue(estimate().contains("Yang and El-Haik (2003)"), this::estimate);

        JButton use = window.frame().button("step.use-estimate").target();
        window.onDesk(desk -> use.doClick());

        assertEquals(OptionalInt.of(38), window.procedure().step(FIRST).seconds());
        assertEquals(TimeSource.ESTIMATED, window.procedure().step(FIRST).timeSource());
        assertEquals("", estimate());
        window.onDesk(Desk::undo);
        assertEquals(OptionalInt.empty(), window.procedure().step(FIRST).seconds());
    }

    /** What is told of a step without a time, as far as it is shown. */
    private String estimate() {
        return window
                .frame()
                .robot()
                .finder()
                .findAll(each -> "step.estimate".equals(each.getName()) && each.isShowing())
                .stream()
                .map(JTextArea.class::cast)
                .map(JTextArea::getText)
                .findFirst()
                .orElse("");
    }

    @Test
    void theRangeOfATimeIsTakenInEitherOrderAndTheTimeStandsForAMissingEnd() {
        select(Selection.of(FIRST));
        hand("step.time", "5:00");
        hand("step.most", "15:00");
        assertEquals(Optional.of(new TimeRange(300, 900)), range());
        hand("step.least", "20:00");
        assertEquals(Optional.of(new TimeRange(900, 1200)), range());
        text("step.least").requireText("15:00");
        hand("step.least", "");
        hand("step.most", "");
        assertEquals(Optional.empty(), range());
    }

    private Optional<TimeRange> range() {
        return window.procedure().step(FIRST).timeRange();
    }

    private void hand(String field, String typed) {
        text(field).focus().deleteText();
        text(field).enterText(typed);
        text(field).pressAndReleaseKeys(KeyEvent.VK_ENTER);
    }

    @Test
    void textStillBeingTypedGoesToTheStepItWasTypedFor() {
        select(Selection.of(FIRST));
        text("step.text").focus().enterText("Take out 4 screws.");
        select(Selection.of(SECOND));
        assertEquals("Take out 4 screws.", window.procedure().step(FIRST).text());
        assertEquals("", window.procedure().step(SECOND).text());
        text("step.text").requireText("");
    }

    @Test
    void textIsHandedInAfterAPause() {
        select(Selection.of(FIRST));
        text("step.text").focus().enterText("Lift.");
        pause(
                new Condition("the text is handed in") {
                    @Override
                    public boolean test() {
                        return window.procedure().step(FIRST).text().equals("Lift.");
                    }
                });
        assertEquals("Lift.", window.procedure().step(FIRST).text());
    }

    @Test
    void aTimeThatIsNoneChangesNothing() {
        select(Selection.of(FIRST));
        retype("step.time", "1:99");
        text("step.time").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals(OptionalInt.empty(), window.procedure().step(FIRST).seconds());
        retype("step.time", "1:05");
        text("step.time").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals(OptionalInt.of(65), window.procedure().step(FIRST).seconds());
    }

    @Test
    void anActionIsAddedAndItsItemCountAndVerbChosen() {
        select(Selection.of(SECOND));
        window.frame().button("Actions.add").click();
        assertEquals(
                Action.of(Verb.LOOSEN, SCREWS, 4),
                window.procedure().step(SECOND).actions().get(0));
        Choice.of(window.frame(), "action.verb").take("remove");
        retype("action.count", "3");
        text("action.count").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals(
                Action.of(Verb.REMOVE, SCREWS, 3),
                window.procedure().step(SECOND).actions().get(0));
        Choice.of(window.frame(), "action.item").take("lid");
        assertEquals(LID, window.procedure().step(SECOND).actions().get(0).item().orElseThrow());
        window.frame().button("Actions.remove").click();
        assertEquals(List.of(), window.procedure().step(SECOND).actions());
    }

    @Test
    void anItemIsChangedInItsForm() {
        select(Selection.of(SCREWS));
        retype("item.count", "0");
        text("item.count").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals(4, window.procedure().item(SCREWS).quantity());
        retype("item.count", "6");
        retype("item.length", "3,5");
        text("item.length").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        Choice.of(window.frame(), "drive.kind").take("hexalobular");
        retype("drive.size", "5");
        text("drive.size").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        FastenerSet set = (FastenerSet) window.procedure().item(SCREWS);
        assertEquals(6, set.quantity());
        assertEquals("T5", set.drive().orElseThrow().label());
        assertEquals("3.5 mm", set.size());
    }

    @Test
    void withNothingSelectedTheTitleOfTheProcedureIsWritten() {
        retype("procedure.title", "Pump: new seal");
        text("procedure.title").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals("Pump: new seal", window.procedure().titleBlock().title());
    }

    @Test
    void whoTriedAStepIsAskedOnceItWasTried() {
        select(Selection.of(FIRST));
        text("step.tried-by").requireDisabled();
        Choice.of(window.frame(), "step.standing").take(Trial.WALKED_THROUGH.word());
        text("step.tried-by").requireEnabled();
        Choice.of(window.frame(), "step.standing").take(Trial.WRITTEN.word());
        text("step.tried-by").requireDisabled();
        assertEquals(Standing.WRITTEN, window.procedure().step(FIRST).standing());
    }
}
