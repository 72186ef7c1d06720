package counterstep.editor.items;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JList;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.JListFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

final class ItemsPanelTest {
    private static final ItemId SCREWS = new ItemId("f3");
    private static final ItemId LID = new ItemId("p4");

    private final PanelWindow window = new PanelWindow(pump(), ItemsPanel::new);

    private static Procedure pump() {
        Step out =
                Step.titled(new StepId("s1"), Phase.TEARDOWN, "Screws out")
                        .draft()
                        .actions(List.of(Action.of(Verb.REMOVE, SCREWS, 4)))
                        .step();
        Step in =
                Step.titled(new StepId("s2"), Phase.REASSEMBLY, "Screws in")
                        .draft()
                        .actions(List.of(Action.of(Verb.REINSTALL, SCREWS, 4)))
                        .step();
        return Procedure.titled("pump", "Pump")
                .draft()
                .items(
                        List.of(
                                FastenerSet.screws(SCREWS, "lid screws", 4, Optional.empty()),
                                Part.named(LID, "lid")
                                        .withFacts(List.of(Hold.by(SCREWS)), List.of(), List.of())))
                .steps(List.of(out, in))
                .links(List.of(Link.drawn(out.id(), in.id())))
                .procedure();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private JListFixture list() {
        return window.frame().list("items");
    }

    private List<String> lines() {
        JList<?> list = list().target();
        return GuiActionRunner.execute(
                () ->
                        java.util.stream.IntStream.range(0, list.getModel().getSize())
                                .mapToObj(at -> (ItemRow) list.getModel().getElementAt(at))
                                .map(ItemRow::toString)
                                .toList());
    }

    @Test
    void screwsStandUnderThePartTheyHoldWithTheirSteps() {
        Pause.pause(
                new Condition("the ledger is there") {
                    @Override
                    public boolean test() {
                        return lines().toString().contains("off in step");
                    }
                });
        assertEquals(
                List.of("lid, stays in", "lid screws, 4, off in step 1, back in step 2"), lines());
    }

    @Test
    void aClickSelectsTheItemOnTheDesk() {
        list().clickItem(1);
        Selection[] selection = new Selection[1];
        window.onDesk(desk -> selection[0] = desk.state().selection());
        assertEquals(Selection.of(SCREWS), selection[0]);
    }

    @Test
    void anItemOfEachKindIsAddedFromTheMenu() {
        window.frame().button("items.add").click();
        window.frame().menuItem("connector").click();
        assertEquals(3, window.procedure().items().size());
        assertEquals("c5", window.procedure().items().get(2).id().value());
        list().requireSelectedItems(2);
    }

    @Test
    void anItemThatIsUsedIsDeletedOnlyWhenTheWriterSaysSo() {
        list().clickItem(1);
        list().pressAndReleaseKeys(KeyEvent.VK_DELETE);
        window.frame().optionPane().requireVisible().buttonWithText("Keep").click();
        assertEquals(2, window.procedure().items().size());
        list().clickItem(1);
        list().pressAndReleaseKeys(KeyEvent.VK_DELETE);
        window.frame().optionPane().buttonWithText("Delete").click();
        assertEquals(1, window.procedure().items().size());
        assertEquals(List.of(), window.procedure().steps().get(0).actions());
        window.onDesk(Desk::undo);
        assertEquals(2, window.procedure().items().size());
        assertEquals(1, window.procedure().steps().get(0).actions().size());
    }

    @Test
    void nothingIsDeletedWithNothingSelected() {
        list().focus();
        list().pressAndReleaseKeys(KeyEvent.VK_DELETE);
        assertArrayEquals(new String[0], list().selection());
        assertEquals(2, window.procedure().items().size());
    }
}
