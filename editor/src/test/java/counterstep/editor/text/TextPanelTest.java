package counterstep.editor.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Item;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.JTextComponentFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;

final class TextPanelTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");
    private static final StepId THIRD = new StepId("s3");

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .lastNumber(3)
                .steps(
                        List.of(
                                step(FIRST, "Lid off", "Lift the lid."),
                                step(SECOND, "Cup out", "Lay it into the lid."),
                                step(THIRD, "Gasket out", "")))
                .procedure();
    }

    private static Step step(StepId id, String title, String text) {
        return Step.titled(id, Phase.TEARDOWN, title).draft().text(text).step();
    }

    private static PanelWindow opened(Procedure procedure) {
        PanelWindow window = new PanelWindow(procedure, TextPanel::new);
        window.frame().resizeTo(new Dimension(900, 600));
        window.frame().textBox("text").focus();
        return window;
    }

    private static JTextComponentFixture text(PanelWindow window) {
        return window.frame().textBox("text");
    }

    private static void caret(PanelWindow window, int offset) {
        GuiActionRunner.execute(() -> text(window).target().setCaretPosition(offset));
    }

    private static int caret(PanelWindow window) {
        window.frame().robot().waitForIdle();
        return GuiActionRunner.execute(() -> text(window).target().getCaretPosition());
    }

    private static void key(PanelWindow window, int modifier, int key) {
        window.frame().robot().pressKey(modifier);
        window.frame().robot().pressAndReleaseKeys(key);
        window.frame().robot().releaseKey(modifier);
    }

    private static String all(PanelWindow window) {
        window.frame().robot().waitForIdle();
        return GuiActionRunner.execute(
                () -> {
                    JTextComponent pane = text(window).target();
                    return pane.getDocument().getText(0, pane.getDocument().getLength());
                });
    }

    private static List<String> said(Procedure procedure) {
        return procedure.steps().stream().map(step -> step.title() + ": " + step.text()).toList();
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

    @Test
    void allStepsAreShownInPageOrder() {
        try (PanelWindow window = opened(pump())) {
            assertEquals(
                    "Lid off\nLift the lid.\nCup out\nLay it into the lid.\nGasket out\n",
                    all(window));
        }
    }

    @Test
    void whatIsTypedIsOneChangeAfterAPause() {
        try (PanelWindow window = opened(pump())) {
            caret(window, 20);
            window.frame().robot().enterText(" up");
            until(
                    "it is handed in",
                    () -> said(window.procedure()).get(0).equals("Lid off: Lift the lid up."));
            window.onDesk(desk -> desk.undo());
            assertEquals(said(pump()), said(window.procedure()));
            until("it is shown", () -> all(window).startsWith("Lid off\nLift the lid.\nCup"));
        }
    }

    @Test
    void enterAtATitleGoesToItsTextAndLeavingHandsIn() {
        try (PanelWindow window = opened(pump())) {
            caret(window, 7);
            window.frame().robot().enterText(" first\n");
            assertEquals("Lid off first: Lift the lid.", said(window.procedure()).get(0));
            assertEquals(14, caret(window));
        }
    }

    @Test
    void whatStandsBetweenTwoPartsCannotBeDeleted() {
        try (PanelWindow window = opened(pump())) {
            String before = all(window);
            caret(window, 8);
            text(window).pressAndReleaseKeys(KeyEvent.VK_BACK_SPACE);
            caret(window, 7);
            text(window).pressAndReleaseKeys(KeyEvent.VK_DELETE);
            key(window, KeyEvent.VK_CONTROL, KeyEvent.VK_A);
            window.frame().robot().enterText("x");
            assertEquals(before, all(window));
            assertEquals(said(pump()), said(window.procedure()));
        }
    }

    @Test
    void stepsAreMovedByKeyAndTheCaretGoesAlong() {
        try (PanelWindow window = opened(pump())) {
            caret(window, 10);
            key(window, KeyEvent.VK_ALT, KeyEvent.VK_DOWN);
            assertEquals(
                    "Cup out\nLay it into the lid.\nLid off\nLift the lid.\nGasket out\n",
                    all(window));
            assertEquals(29 + 10, caret(window));
            key(window, KeyEvent.VK_ALT, KeyEvent.VK_UP);
            assertEquals(pump().steps(), window.procedure().steps());
            assertEquals(10, caret(window));
        }
    }

    @Test
    void controlEnterAddsAStepBelowToBeNamedAtOnce() {
        try (PanelWindow window = opened(pump())) {
            caret(window, 25);
            key(window, KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
            window.frame().robot().enterText("Spring out\nMind it.");
            until(
                    "it is there",
                    () -> said(window.procedure()).get(2).equals("Spring out: Mind it."));
            Procedure now = window.procedure();
            assertEquals(
                    List.of(new LinkEnds(SECOND, now.steps().get(2).id())),
                    now.links().stream().map(link -> link.ends()).toList());
            assertEquals(LinkOrigin.AS_TOLD, now.links().get(0).origin());
        }
    }

    @Test
    void selectionAndCaretFollowEachOther() {
        try (PanelWindow window = opened(pump())) {
            caret(window, 25);
            Selection[] selected = new Selection[1];
            window.onDesk(desk -> selected[0] = desk.state().selection());
            assertEquals(Selection.of(SECOND), selected[0]);
            window.onDesk(desk -> desk.select(Selection.of(THIRD)));
            assertEquals(51, caret(window));
        }
    }

    @Test
    void aClickIntoATextFromElsewhereSelectsItsStep() {
        try (PanelWindow window = opened(pump())) {
            window.frame().textBox("text find").focus();
            Rectangle place =
                    GuiActionRunner.execute(
                            () -> text(window).target().modelToView2D(25).getBounds());
            window.frame().robot().click(text(window).target(), place.getLocation());
            window.frame().robot().waitForIdle();
            Selection[] selected = new Selection[1];
            window.onDesk(desk -> selected[0] = desk.state().selection());
            assertEquals(Selection.of(SECOND), selected[0]);
        }
    }

    @Test
    void wordsAreReplacedInAllTextsAsOneChange() {
        try (PanelWindow window = opened(pump())) {
            key(window, KeyEvent.VK_CONTROL, KeyEvent.VK_F);
            window.frame().robot().enterText("lid");
            assertEquals("3 places in 2 steps", window.frame().label("text found").text());
            window.frame().textBox("text find").pressAndReleaseKeys(KeyEvent.VK_ENTER);
            assertEquals(
                    "Lid", GuiActionRunner.execute(() -> text(window).target().getSelectedText()));
            window.frame().textBox("text replace").enterText("cover");
            window.frame().button("text Replace all").click();
            assertEquals(
                    List.of(
                            "Cover off: Lift the cover.",
                            "Cup out: Lay it into the cover.",
                            "Gasket out: "),
                    said(window.procedure()));
            assertEquals("3 places replaced", window.frame().label("text found").text());
            window.onDesk(desk -> desk.undo());
            assertEquals(said(pump()), said(window.procedure()));
        }
    }

    @Test
    void aThingThatIsNoItemIsMadeOneByOneClick() {
        Procedure before = pump();
        Step first = before.steps().get(0);
        Procedure brackets =
                before.draft()
                        .steps(List.of(first.draft().text("Lift the earth bracket off.").step()))
                        .procedure();
        try (PanelWindow window = opened(brackets)) {
            var list = window.frame().list("terms");
            until(
                    "the thing is offered",
                    () -> GuiActionRunner.execute(() -> line(list.target(), "earth bracket")) >= 0);
            Point word =
                    GuiActionRunner.execute(
                            () -> {
                                int at = line(list.target(), "earth bracket");
                                Rectangle cell = list.target().getCellBounds(at, at);
                                return new Point(
                                        (int) cell.getMaxX() - 30, (int) cell.getCenterY());
                            });
            window.frame().robot().click(list.target(), word);
            Item made = window.procedure().items().get(window.procedure().items().size() - 1);
            assertEquals("earth bracket", made.name());
            window.onDesk(
                    desk -> {
                        assertEquals(Selection.of(made.id()), desk.state().selection());
                        assertEquals(Optional.of("Add item"), desk.undoName());
                        desk.undo();
                        assertEquals(brackets, desk.state().procedure());
                    });
        }
    }

    private static int line(JList<?> list, String words) {
        for (int at = 0; at < list.getModel().getSize(); at++) {
            if (list.getModel().getElementAt(at).toString().equals(words)) {
                return at;
            }
        }
        return -1;
    }

    @Test
    void aClickOnATermGoesToItsNextUse() {
        Procedure fan = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));
        try (PanelWindow window = opened(fan)) {
            window.frame().list("terms").clickItem(4);
            assertEquals(
                    "cover screws",
                    GuiActionRunner.execute(() -> text(window).target().getSelectedText()));
            int first = caret(window);
            window.frame().list("terms").clickItem(4);
            assertEquals(
                    "cover screws",
                    GuiActionRunner.execute(() -> text(window).target().getSelectedText()));
            assertEquals(true, caret(window) > first);
        }
    }
}
