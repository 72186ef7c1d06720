package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.editor.remembered.Remembered;
import counterstep.editor.remembered.Side;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Theme;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.prefs.Preferences;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PanelDockTest {
    @TempDir private Path folder;

    private final Preferences preferences = new PreferencesInMemory();
    private StartedWindow window;

    @BeforeEach
    void open() {
        new Remembered(preferences).window(new Rectangle(60, 40, 1200, 800));
        window = started();
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private StartedWindow started() {
        Path file = Samples.file(Samples.HURRIED);
        StartedWindow started = new StartedWindow(preferences, folder, Optional.of(file));
        started.untilOpen(file);
        return started;
    }

    private void restarted() {
        window.close();
        window.untilClosed();
        window.cleanUp();
        window = started();
    }

    /** The names of the panels seen at a side, the one in front with a star. */
    private String at(Side side) {
        window.robot.waitForIdle();
        return on(
                () -> {
                    JTabbedPane tabs = tabs(side);
                    return Stream.iterate(0, tab -> tab < tabs.getTabCount(), tab -> tab + 1)
                            .map(
                                    tab ->
                                            tabs.getTitleAt(tab).replaceAll(" \\d+.*", "")
                                                    + (tab == tabs.getSelectedIndex() ? "*" : ""))
                            .reduce((one, other) -> one + ", " + other)
                            .orElse("");
                });
    }

    private JTabbedPane tabs(Side side) {
        return window.robot
                .finder()
                .find(
                        window.workbench.frame(),
                        new GenericTypeMatcher<JTabbedPane>(JTabbedPane.class) {
                            @Override
                            protected boolean isMatching(JTabbedPane tabs) {
                                return ("panels " + side.word()).equals(tabs.getName());
                            }
                        });
    }

    /** Panels that stand after those are no concern of a test. */
    private void untilAt(Side side, String panels) {
        until(
                panels + " stand " + side.word(),
                () -> panels.isEmpty() ? at(side).isEmpty() : at(side).startsWith(panels));
    }

    private void everythingIsAsAtFirst() {
        untilAt(Side.LEFT, "Items*");
        untilAt(Side.RIGHT, "Details*");
        untilAt(Side.BELOW, "Findings*, On the bench, Timetable");
    }

    private Point tab(Side side, String title) {
        return on(
                () -> {
                    JTabbedPane tabs = tabs(side);
                    int at = 0;
                    while (!tabs.getTitleAt(at).startsWith(title)) {
                        at++;
                    }
                    Rectangle bounds = tabs.getBoundsAt(at);
                    Point there = new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
                    SwingUtilities.convertPointToScreen(there, tabs);
                    return there;
                });
    }

    private void fromTabMenu(Side side, String title, String entry) {
        window.robot.click(tab(side, title), MouseButton.RIGHT_BUTTON, 1);
        window.frame.menuItem(entry).click();
    }

    private void drag(Point from, Point to) {
        window.robot.pressMouse(from, MouseButton.LEFT_BUTTON);
        window.robot.moveMouse(new Point((from.x + to.x) / 2, (from.y + to.y) / 2));
        window.robot.moveMouse(to);
        window.robot.waitForIdle();
        window.robot.releaseMouse(MouseButton.LEFT_BUTTON);
        window.robot.waitForIdle();
    }

    private void shiftControl(int key) {
        window.robot.pressKey(KeyEvent.VK_SHIFT);
        window.control(key);
        window.robot.releaseKey(KeyEvent.VK_SHIFT);
        window.robot.waitForIdle();
    }

    private DialogFixture floating(String panel) {
        return WindowFinder.findDialog("floating " + panel).using(window.robot);
    }

    private boolean floats(String panel) {
        window.robot.waitForIdle();
        return on(
                () ->
                        Arrays.stream(window.workbench.frame().getOwnedWindows())
                                .anyMatch(
                                        each ->
                                                each.isShowing()
                                                        && ("floating " + panel)
                                                                .equals(each.getName())));
    }

    @Test
    void atFirstItemsStandLeftDetailsRightAndTheOthersBelow() {
        everythingIsAsAtFirst();
    }

    @Test
    void aPanelIsHiddenAndBroughtBackFromTheMenu() {
        fromTabMenu(Side.BELOW, "On the bench", "Hide");
        assertFalse(at(Side.BELOW).contains("On the bench"));
        window.frame.menuItem("Window").click();
        window.frame.menuItem("Panels").click();
        window.frame.menuItem("Hide On the bench").requireVisible().click();
        untilAt(Side.BELOW, "Findings, On the bench*, Timetable");
    }

    @Test
    void theLastPanelOfASideThatIsHiddenLeavesItsSpaceToTheGraph() {
        int before = on(() -> graph().getWidth());
        window.control(KeyEvent.VK_1);
        shiftControl(KeyEvent.VK_I);
        shiftControl(KeyEvent.VK_H);
        untilAt(Side.LEFT, "");
        assertTrue(on(() -> graph().getWidth()) > before + 200);
        shiftControl(KeyEvent.VK_I);
        untilAt(Side.LEFT, "Items*");
        assertEquals(before, on(() -> graph().getWidth()));
    }

    private JComponent graph() {
        return (JComponent)
                window.robot.finder().findByName(window.workbench.frame(), "step graph", true);
    }

    @Test
    void aPanelIsMovedByKey() {
        window.control(KeyEvent.VK_3);
        shiftControl(KeyEvent.VK_R);
        untilAt(Side.RIGHT, "Details, Timetable*");
        shiftControl(KeyEvent.VK_L);
        untilAt(Side.LEFT, "Items, Timetable*");
        shiftControl(KeyEvent.VK_B);
        untilAt(Side.LEFT, "Items*");
        assertTrue(at(Side.BELOW).endsWith("Timetable*"));
    }

    @Test
    void aTabIsDraggedToAnotherSide() {
        drag(tab(Side.BELOW, "Timetable"), on(() -> middleOf(tabs(Side.RIGHT))));
        untilAt(Side.RIGHT, "Details, Timetable*");
    }

    @Test
    void aTabIsDraggedAmongTheOthers() {
        drag(tab(Side.BELOW, "Timetable"), tab(Side.BELOW, "Findings"));
        untilAt(Side.BELOW, "Timetable*, Findings, On the bench");
    }

    @Test
    void aTabThatIsDraggedOntoTheGraphFloatsAndIsPutBack() {
        drag(tab(Side.BELOW, "On the bench"), on(() -> middleOf(graph())));
        until("it floats", () -> floats("On the bench"));
        assertFalse(at(Side.BELOW).contains("On the bench"));
        floating("On the bench").button("Put back").click();
        until("it is back", () -> !floats("On the bench"));
        assertTrue(at(Side.BELOW).contains("On the bench*"));
    }

    private static Point middleOf(Component component) {
        Point middle = new Point(component.getWidth() / 2, component.getHeight() / 2);
        SwingUtilities.convertPointToScreen(middle, component);
        return middle;
    }

    @Test
    void aFloatingPanelObeysTheKeysOfTheWindowAndItsTheme() {
        rename("Another title");
        fromTabMenu(Side.BELOW, "Timetable", "Float");
        DialogFixture timetable = floating("Timetable");
        timetable.focus();
        window.control(KeyEvent.VK_Z);
        until("it is undone", () -> window.ofDesk(desk -> desk.redoName().isPresent()));
        window.control(KeyEvent.VK_D);
        until("dark", () -> on(() -> Theme.current() == Theme.DARK));
        assertEquals(
                on(() -> Palette.PANEL.color()),
                on(() -> timetable.button("Put back").target().getParent().getBackground()));
        shiftControl(KeyEvent.VK_H);
        until("it is hidden", () -> !floats("Timetable"));
        window.control(KeyEvent.VK_3);
        until("it floats again", () -> floats("Timetable"));
    }

    @Test
    void whatIsTypedInAFloatingPanelIsHandedInOnSaving() {
        shiftControl(KeyEvent.VK_D);
        shiftControl(KeyEvent.VK_F);
        DialogFixture details = floating("Details");
        details.textBox("procedure.title").focus().selectAll();
        details.textBox("procedure.title").enterText("Floating");
        GuiActionRunner.execute(() -> window.workbench.handIn());
        assertEquals(
                "Floating", window.ofDesk(desk -> desk.state().procedure().titleBlock().title()));
    }

    @Test
    void everythingComesBackAsItWasLeft() {
        fromTabMenu(Side.BELOW, "Timetable", "Float");
        Dialog timetable = floating("Timetable").target();
        GuiActionRunner.execute(() -> timetable.setBounds(300, 200, 640, 360));
        fromTabMenu(Side.BELOW, "On the bench", "Move to the right");
        shiftControl(KeyEvent.VK_I);
        shiftControl(KeyEvent.VK_H);
        String below = at(Side.BELOW);
        restarted();
        untilAt(Side.LEFT, "");
        untilAt(Side.RIGHT, "Details, On the bench*");
        assertEquals(below, at(Side.BELOW));
        until("it floats", () -> floats("Timetable"));
        Dialog again = floating("Timetable").target();
        assertEquals(new Dimension(640, 360), on(again::getSize));
        window.frame.menuItemWithPath("Window", "Arrangement as at first").click();
        everythingIsAsAtFirst();
        assertFalse(floats("Timetable"));
    }

    @Test
    void whatIsDamagedOrFromElsewhereGivesTheFirstArrangement() {
        window.close();
        window.untilClosed();
        window.cleanUp();
        preferences.put("arrangement", "left: Items|below front: \u0001");
        window = started();
        everythingIsAsAtFirst();
    }

    @Test
    void theReviewerHasFindingsLargeAndNoItems() {
        int before = on(() -> tabs(Side.BELOW).getHeight());
        window.frame.menuItemWithPath("Window", "Arrange for the reviewer").click();
        untilAt(Side.LEFT, "");
        untilAt(Side.BELOW, "Findings*");
        assertTrue(on(() -> tabs(Side.BELOW).getHeight()) > before + 40);
        window.frame.menuItemWithPath("Window", "Arrange for the writer").click();
        untilAt(Side.LEFT, "Items*");
        assertEquals("Findings*, On the bench", at(Side.BELOW).replaceAll(", (Photos|Blocks)", ""));
        int after = on(() -> tabs(Side.BELOW).getHeight());
        assertTrue(Math.abs(after - before) < 8, () -> before + " and then " + after);
    }

    @Test
    void aPanelThatIsHiddenRendersNothingUntilItIsShown() {
        JList<?> findings = window.frame.list("findings").target();
        JList<?> items = window.frame.list("items").target();
        shiftControl(KeyEvent.VK_I);
        shiftControl(KeyEvent.VK_H);
        window.control(KeyEvent.VK_2);
        int found = on(() -> findings.getModel().getSize());
        int listed = on(() -> items.getModel().getSize());
        GuiActionRunner.execute(
                () ->
                        window.desk.opened(
                                ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN)),
                                Optional.empty()));
        until("it is examined", this::examined);
        assertEquals(found, on(() -> findings.getModel().getSize()));
        assertEquals(listed, on(() -> items.getModel().getSize()));
        window.control(KeyEvent.VK_1);
        shiftControl(KeyEvent.VK_I);
        assertEquals(0, on(() -> findings.getModel().getSize()));
        assertEquals(
                window.ofDesk(desk -> desk.state().procedure().items().size()),
                on(() -> items.getModel().getSize()));
    }

    private boolean examined() {
        return window.ofDesk(
                desk ->
                        desk.analysis()
                                .filter(each -> !each.renewing())
                                .filter(each -> each.generation() == desk.state().generation())
                                .isPresent());
    }

    private void rename(String title) {
        StepId step = window.ofDesk(Desk::state).procedure().steps().get(0).id();
        GuiActionRunner.execute(() -> window.desk.apply(new RenameStep(step, title)));
    }
}
