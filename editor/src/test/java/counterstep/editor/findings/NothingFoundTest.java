package counterstep.editor.findings;

import static org.junit.jupiter.api.Assertions.assertFalse;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.details.PanelWindow;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.testing.Sketch;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What an empty list says: no more than the checks that looked can promise. */
final class NothingFoundTest {
    private static final Procedure SOUND = Sketch.of().step("check").procedure();

    private FindingsPanel panel;
    private PanelWindow window;

    private void open(Procedure procedure) {
        window = new PanelWindow(procedure, this::list);
    }

    private DeskPanel list(Desk desk) {
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);
        panel = new FindingsPanel(desk, clock, new NobodyYet());
        return panel;
    }

    private static final class NobodyYet implements ReviewerName {
        @Override
        public String last() {
            return "";
        }

        @Override
        public void keep(String name) {
            throw new AssertionError("nothing is waived here");
        }
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void says(String sentence) {
        Pause.pause(
                new Condition("the empty list says: " + sentence) {
                    @Override
                    public boolean test() {
                        return window.frame().label("nothing found").text().equals(sentence);
                    }
                });
    }

    @Test
    void aSoundProcedureIsPromisedInEveryOrder() {
        open(SOUND);
        says(
                "Nothing found: every removal has its reinstall, in every order that the links"
                        + " allow.");
        assertFalse(GuiActionRunner.execute(() -> panel.tabControls().orElseThrow().isVisible()));
    }

    @Test
    void whereACheckIsOffNothingIsPromised() {
        CheckSetting off =
                new CheckSetting("never-put-back", Optional.empty(), "a scrap device", Extras.NONE);
        open(SOUND.draft().settings(List.of(off)).procedure());
        says("The checks that are on find nothing.");
    }
}
