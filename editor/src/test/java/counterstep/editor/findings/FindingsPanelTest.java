package counterstep.editor.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Replayed;
import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.editor.testing.Choice;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import counterstep.review.AllChecks;
import counterstep.testing.Sketch;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class FindingsPanelTest {
    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);

    /** Screws never put back, a plug left open, and a link that follows from two others. */
    private static final Procedure FAULTY =
            Sketch.of()
                    .screws("f1", 2)
                    .connectors("c2", 1)
                    .steps("remove f1", "disconnect c2")
                    .phase(Phase.VERIFY)
                    .step("check")
                    .link(1, 2)
                    .link(2, 3)
                    .link(1, 3)
                    .procedure()
                    .draft()
                    .settings(offBut("never-put-back", "left-open", "link-implied-already"))
                    .procedure();

    /** Only these checks look, so that checks to come find nothing more here. */
    private static List<CheckSetting> offBut(String... checks) {
        return AllChecks.list().stream()
                .map(check -> check.about().id())
                .filter(id -> !List.of(checks).contains(id))
                .map(id -> new CheckSetting(id, Optional.empty(), "not here", Extras.NONE))
                .toList();
    }

    private final List<String> kept = new CopyOnWriteArrayList<>();
    private final List<Replayed> walked = new CopyOnWriteArrayList<>();
    private final List<StepId> visited = new CopyOnWriteArrayList<>();
    private FindingsPanel panel;
    private PanelWindow window;

    /** The panel with its controls above and what stands beside it. */
    private DeskPanel whole(Desk desk) {
        panel = new FindingsPanel(desk, CLOCK, new Kept());
        panel.onWalk(walked::add);
        panel.onVisit(visited::add);
        JPanel whole = new JPanel(new BorderLayout());
        whole.add(panel.tabControls().orElseThrow(), BorderLayout.NORTH);
        whole.add(panel.component(), BorderLayout.CENTER);
        JComponent beside = panel.beside().orElseThrow();
        beside.setPreferredSize(new Dimension(320, 300));
        whole.add(beside, BorderLayout.LINE_END);
        return new Whole(whole);
    }

    private record Whole(JComponent component) implements DeskPanel {
        @Override
        public String title() {
            return "Findings";
        }
    }

    private final class Kept implements ReviewerName {
        @Override
        public String last() {
            return kept.isEmpty() ? "" : kept.get(kept.size() - 1);
        }

        @Override
        public void keep(String name) {
            kept.add(name);
        }
    }

    @BeforeEach
    void open() {
        window = new PanelWindow(FAULTY, this::whole);
        window.frame().resizeTo(new Dimension(1200, 420));
        until(
                "all are listed with the fix",
                () -> rows().size() == 3 && rows().get(2).fix().isPresent());
    }

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

    private FindingList list() {
        return window.frame().robot().finder().findByType(FindingList.class, false);
    }

    private List<FindingRow> rows() {
        return list().rows();
    }

    private <T> T ofDesk(Function<Desk, T> answer) {
        window.procedure(); // waits until all events are done
        List<T> told = new ArrayList<>();
        window.onDesk(desk -> told.add(answer.apply(desk)));
        return told.get(0);
    }

    private Selection selection() {
        return ofDesk(desk -> desk.state().selection());
    }

    private void click(int row, RowPart part) {
        FindingList list = list();
        Rectangle bounds = GuiActionRunner.execute(() -> list.bounds(row, part));
        window.frame()
                .robot()
                .click(list, new Point((int) bounds.getCenterX(), (int) bounds.getCenterY()));
    }

    private DialogFixture dialog(String title) {
        return WindowFinder.findDialog(title).using(window.frame().robot());
    }

    private static Set<StepId> steps(String... ids) {
        return Stream.of(ids).map(StepId::new).collect(LinkedHashSet::new, Set::add, Set::addAll);
    }

    @Test
    void choosingAFindingSelectsAllItsStepsByMouseAndByKey() {
        click(0, RowPart.BODY);
        assertEquals(steps("s1"), selection().steps());
        window.frame().list("findings").pressAndReleaseKeys(KeyEvent.VK_DOWN);
        assertEquals(steps("s2"), selection().steps());
        window.frame().list("findings").pressAndReleaseKeys(KeyEvent.VK_DOWN);
        assertEquals(steps("s1", "s3"), selection().steps());
        window.frame().list("findings").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        window.procedure();
        assertEquals(List.of(new StepId("s1")), visited);
    }

    @Test
    void theChosenFindingIsToldAsAnOrderAndALineOfItSelectsItsStep() {
        click(0, RowPart.BODY);
        assertEquals(
                List.of(
                        "do step 1, remove f1: f1 screws 2 out",
                        "go on to the end of the page",
                        "at the end: f1 screws 2 out"),
                List.of(window.frame().list("how it goes wrong").contents()).stream()
                        .map(FindingsPanelTest::text)
                        .toList());
        click(1, RowPart.BODY);
        window.frame().list("how it goes wrong").clickItem(0);
        assertEquals(steps("s2"), selection().steps());
    }

    private static String text(String line) {
        return line.replaceAll("^Line\\[text=(.*), steps=.*", "$1");
    }

    @Test
    void theOrderIsWalkedThroughStepByStepAndEndsOnEscape() {
        click(1, RowPart.BODY);
        window.frame().button("replay next step").click();
        window.frame().button("replay next step").click();
        assertEquals(
                new Replayed(List.copyOf(steps("s1", "s2")), Optional.empty()),
                walked.get(walked.size() - 1));
        window.frame().list("how it goes wrong").focus();
        window.frame().list("how it goes wrong").pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        window.procedure();
        assertEquals(Replayed.NOTHING, walked.get(walked.size() - 1));
    }

    @Test
    void aWalkEndsWhenTheDocumentChanges() {
        click(1, RowPart.BODY);
        window.frame().button("replay next step").click();
        window.procedure();
        assertEquals(1, walked.get(walked.size() - 1).done().size());
        window.onDesk(desk -> desk.apply(new RenameStep(new StepId("s3"), "Try it")));
        window.procedure();
        assertEquals(Replayed.NOTHING, walked.get(walked.size() - 1));
    }

    @Test
    void theOrderPlaysToItsEndByItself() {
        click(1, RowPart.BODY);
        window.frame().button("replay").click();
        until("all steps are done", () -> walked.get(walked.size() - 1).done().size() == 3);
        until(
                "it can be played again",
                () -> window.frame().button("replay").target().getText().equals("Replay"));
        window.frame().button("replay next step").requireText("End replay").click();
        window.procedure();
        assertEquals(Replayed.NOTHING, walked.get(walked.size() - 1));
    }

    @Test
    void aFixShowsWhatItChangesAndIsOneUndo() {
        click(2, RowPart.FIX);
        DialogFixture preview = dialog("Leave it out");
        preview.textBox("what will change")
                .requireText("Link goes: step 1, remove f1, before step 3, check.");
        preview.button("Cancel").click();
        assertEquals(FAULTY, window.procedure());
        click(2, RowPart.FIX);
        dialog("Leave it out").button("Apply").click();
        assertEquals(2, window.procedure().links().size());
        assertEquals(Optional.of("Leave it out"), ofDesk(Desk::undoName));
        until("it is gone", () -> rows().size() == 2);
        until("the list has the keyboard", () -> list().isFocusOwner());
        assertEquals(1, GuiActionRunner.execute(() -> list().getSelectedIndex()));
        window.onDesk(Desk::undo);
        assertEquals(FAULTY, window.procedure());
    }

    @Test
    void waivingAsksForAReasonAndKeepsNameAndDate() {
        click(0, RowPart.WAIVE);
        DialogFixture question = dialog("Waive: never put back");
        question.button("Waive").requireDisabled();
        question.textBox("waiver.reason").enterText("kept as spares");
        question.button("Waive").requireDisabled();
        question.textBox("waiver.name").enterText("R. Oda");
        question.button("Waive").requireEnabled().click();
        Waiver waiver =
                new Waiver(
                        "never-put-back",
                        List.of(new StepId("s1")),
                        List.of(new ItemId("f1")),
                        "kept as spares",
                        "R. Oda",
                        "2026-03-02",
                        Extras.NONE);
        assertEquals(List.of(waiver), window.procedure().waivers());
        assertEquals(List.of("R. Oda"), kept);
        until("it stands last", () -> !rows().get(2).finding().open());
        assertEquals("waived by R. Oda, 2026-03-02: kept as spares", rows().get(2).waiver());
        click(2, RowPart.WAIVE);
        assertEquals(List.of(), window.procedure().waivers());
        window.onDesk(Desk::undo);
        assertEquals(List.of(waiver), window.procedure().waivers());
    }

    @Test
    void onlyOpenFindingsAreCounted() {
        List<String> counts = new CopyOnWriteArrayList<>();
        GuiActionRunner.execute(() -> panel.onCount(counts::add));
        click(0, RowPart.WAIVE);
        DialogFixture question = dialog("Waive: never put back");
        question.textBox("waiver.reason").enterText("a");
        question.textBox("waiver.name").enterText("b");
        question.textBox("waiver.name").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("one counts less", () -> counts.get(counts.size() - 1).equals("2"));
        window.frame().toggleButton("show waived").click();
        until("it is not listed", () -> rows().size() == 2);
    }

    @Test
    void theListIsFilteredBySeverityAndByCheck() {
        window.frame().toggleButton("show errors").click();
        until("the hint is left", () -> rows().size() == 1);
        window.frame().toggleButton("show hints").click();
        until("none is left", () -> rows().isEmpty());
        window.frame()
                .label("nothing found")
                .requireText("The filter lets none of the 3 findings pass.");
        window.frame().toggleButton("show errors").click();
        window.frame().toggleButton("show hints").click();
        window.frame().comboBox("show check").selectItem("left open");
        until("one check is left", () -> rows().size() == 1);
        assertEquals("left open", rows().get(0).check());
    }

    @Test
    void everyVerbIsLargeEnoughToHit() {
        for (RowPart part : List.of(RowPart.FIX, RowPart.WAIVE)) {
            Rectangle bounds = GuiActionRunner.execute(() -> list().bounds(2, part));
            assertTrue(bounds.width >= 24 && bounds.height >= 24, part + " " + bounds);
        }
    }

    @Test
    void aCheckIsSwitchedOffWithAReasonAndUnknownSettingsStay() {
        CheckSetting unknown =
                new CheckSetting("of-a-later-version", Optional.empty(), "so", Extras.NONE);
        window.onDesk(
                desk ->
                        desk.opened(
                                FAULTY.draft().settings(List.of(unknown)).procedure(),
                                Optional.empty()));
        SwingUtilities.invokeLater(() -> panel.settings());
        DialogFixture settings = dialog("Check settings");
        Choice.of(settings, "setting.never-put-back").take("Off");
        settings.button("Set").requireDisabled();
        settings.label("reason owed")
                .requireText("Give a reason why 'never put back' counts for less here.");
        settings.textBox("reason.never-put-back").enterText("a teardown alone");
        Choice.of(settings, "setting.link-implied-already").take("Error");
        settings.button("Set").requireEnabled().click();
        assertEquals(
                Set.of(
                        unknown,
                        new CheckSetting(
                                "never-put-back",
                                Optional.empty(),
                                "a teardown alone",
                                Extras.NONE),
                        new CheckSetting(
                                "link-implied-already",
                                Optional.of(Severity.ERROR),
                                "",
                                Extras.NONE)),
                Set.copyOf(window.procedure().settings()));
        until(
                "it is not looked for",
                () -> rows().stream().noneMatch(row -> row.check().equals("never put back")));
    }
}
