package counterstep.editor.quickline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.assertj.swing.fixture.JTextComponentFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class QuickLinePanelTest {
    private static final Procedure SAMPLE = ProcedureFile.read(Samples.file(Samples.STICK_UNIT));

    private PanelWindow window;
    private JTextComponentFixture line;

    @BeforeEach
    void open() {
        window = new PanelWindow(SAMPLE, QuickLinePanel::new);
        window.onDesk(desk -> desk.select(Selection.of(new StepId("s16"))));
        line = window.frame().textBox("quick line");
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void keys(int... keys) {
        line.pressAndReleaseKeys(keys);
    }

    private List<Set<StepId>> selected() {
        List<Set<StepId>> seen = new ArrayList<>();
        window.onDesk(desk -> seen.add(desk.state().selection().steps()));
        return seen;
    }

    @Test
    void itSaysWhatEnterWillDoAndTabCompletes() {
        line.enterText("remove 2 x T5 4 mm cable clamp");
        window.frame()
                .textBox("quick line says")
                .requireText(
                        "new step below 16: remove 2 × T5 4 mm cable clamp screws"
                                + " (new item: fastener set)");
        keys(KeyEvent.VK_TAB);
        line.requireText("remove 2 clamp screws");
        window.frame()
                .textBox("quick line says")
                .requireText("new step below 16: remove 2 clamp screws (f6)");
    }

    @Test
    void anArrowChoosesWhatEnterTakes() {
        line.enterText("unplug ");
        keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        Procedure after = window.procedure();
        assertEquals(SAMPLE.steps().size() + 1, after.steps().size());
        assertEquals("Unplug cell lead", after.steps().get(16).title());
        assertEquals(List.of(Set.of(after.steps().get(16).id())), selected());
        line.requireText("");
    }

    @Test
    void escapeLeavesTheWordsAndMakesNothing() {
        line.enterText("lid off");
        keys(KeyEvent.VK_ESCAPE);
        line.requireText("lid off");
        assertEquals(SAMPLE, window.procedure());
    }

    @Test
    void whatIsTypedIsNeverMarkup() {
        line.enterText("<html><b>lid</b>");
        window.frame()
                .textBox("quick line says")
                .requireText("new step below 16: '<html><b>lid</b>'");
        keys(KeyEvent.VK_ENTER);
        assertEquals("<html><b>lid</b>", window.procedure().steps().get(16).title());
    }
}
