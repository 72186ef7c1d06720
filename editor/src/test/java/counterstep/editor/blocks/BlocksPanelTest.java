package counterstep.editor.blocks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Selection;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Hazard;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.store.BlockFolder;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BlocksPanelTest {
    @TempDir private Path folder;

    private final Procedure fan = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));
    private BlocksPanel panel;
    private PanelWindow window;

    @BeforeEach
    void open() {
        window =
                new PanelWindow(
                        fan,
                        desk -> {
                            panel = new BlocksPanel(desk);
                            return panel;
                        });
        GuiActionRunner.execute(() -> panel.keepIn(BlockFolder.at(folder)));
    }

    @AfterEach
    void close() {
        window.close();
    }

    private List<String> listed() {
        return Arrays.asList(window.frame().list("blocks").contents());
    }

    private int place(String title) {
        List<String> all = listed();
        for (int at = 0; at < all.size(); at++) {
            if (all.get(at).startsWith(title + ",")) {
                return at;
            }
        }
        throw new AssertionError(title + " is not among " + all);
    }

    private void select(int... numbers) {
        List<StepId> ids =
                Arrays.stream(numbers).mapToObj(at -> fan.steps().get(at - 1).id()).toList();
        window.onDesk(desk -> desk.select(Selection.ofSteps(new java.util.LinkedHashSet<>(ids))));
    }

    private DialogFixture keep() {
        SwingUtilities.invokeLater(panel::keep);
        return WindowFinder.findDialog("Keep as block").using(window.frame().robot());
    }

    @Test
    void aSuppliedBlockIsPutInByADoubleClickAndUndone() {
        select(2);
        window.frame().list("blocks").item(place("Static precautions")).doubleClick();
        Procedure after = window.procedure();
        assertEquals("Strap on, mat grounded", after.steps().get(2).title());
        assertEquals(fan.tools(), after.tools(), "the strap was on the list already");
        window.onDesk(
                desk -> {
                    assertEquals(Optional.of("Put in: Static precautions"), desk.undoName());
                    desk.undo();
                });
        assertEquals(fan, window.procedure());
    }

    @Test
    void cautionsAloneAreAddedToTheWholeWork() {
        window.frame().list("blocks").selectItem(place("Cautions: heat and glass"));
        window.frame().list("blocks").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        List<Hazard> cautions = window.procedure().titleBlock().cautions();
        assertEquals(fan.titleBlock().cautions().size() + 3, cautions.size());
        assertEquals(fan.steps(), window.procedure().steps());
    }

    @Test
    void selectedStepsAreKeptAsABlockAndPutIntoAnotherDocument() {
        select(1, 2);
        DialogFixture dialog = keep();
        dialog.textBox("block.name").setText("Plug out");
        dialog.button("Keep").click();
        window.frame().list("blocks").item(place("Plug out")).click();
        window.frame()
                .textBox("block description")
                .requireText(java.util.regex.Pattern.compile("(?s)1\\. Plug out and in sight.*"));
        Procedure other =
                Procedure.titled("lamp", "Lamp")
                        .draft()
                        .steps(List.of(Step.titled(new StepId("s1"), Phase.TEARDOWN, "Shade off")))
                        .procedure();
        window.onDesk(desk -> desk.opened(other, Optional.empty()));
        window.frame().list("blocks").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals(
                List.of("Plug out and in sight", "Wait for the capacitors", "Shade off"),
                window.procedure().steps().stream().map(Step::title).toList(),
                "preparation goes before the teardown");
    }

    @Test
    void theToolListIsKeptAndThrownAway() {
        DialogFixture dialog = keep();
        dialog.textBox("block.name").setText("Fan tools");
        dialog.button("Keep").click();
        int place = place("Fan tools");
        Procedure kept = BlockFolder.at(folder).read().blocks().stream().findFirst().orElseThrow();
        assertEquals(
                fan.tools().stream().map(Tool::name).toList(),
                kept.tools().stream().map(Tool::name).toList());
        window.frame().list("blocks").selectItem(place);
        window.frame().list("blocks").pressAndReleaseKeys(KeyEvent.VK_DELETE);
        assertTrue(listed().stream().noneMatch(row -> row.startsWith("Fan tools")));
        assertEquals(List.of(), BlockFolder.at(folder).read().blocks());
    }

    @Test
    void aDamagedBlockIsToldAndLeftAsItIs() throws IOException {
        Path damaged = folder.resolve("mine.procedure.json");
        Files.writeString(damaged, "{\"format\": \"counter");
        GuiActionRunner.execute(() -> panel.keepIn(BlockFolder.at(folder)));
        window.frame()
                .textBox("block description")
                .requireText(java.util.regex.Pattern.compile("(?s)mine\\.procedure\\.json.*"));
        assertEquals(6, listed().size(), "the supplied ones are there");
        assertEquals("{\"format\": \"counter", Files.readString(damaged));
    }

    @Test
    void everySuppliedBlockSaysWhoseInstructionsComeFirstWhereItWarns() {
        for (Procedure block : Supplied.blocks()) {
            block.titleBlock().cautions().forEach(BlocksPanelTest::defers);
            block.steps().forEach(step -> step.hazards().forEach(BlocksPanelTest::defers));
        }
    }

    private static void defers(Hazard hazard) {
        assertTrue(
                hazard.avoidance().contains("The maker's instructions and the local rules come"),
                hazard::avoidance);
    }

    @Test
    void aBlockOfTheSameNameTakesThePlaceOfTheOld() {
        Procedure one = Procedure.titled("block", "Mine");
        Procedure two =
                one.draft()
                        .steps(List.of(Step.titled(new StepId("s1"), Phase.VERIFY, "Try it")))
                        .procedure();
        BlockFolder own = BlockFolder.at(folder);
        own.keep(one);
        assertTrue(own.has("mine"));
        own.keep(two);
        assertEquals(List.of(two), own.read().blocks());
    }
}
