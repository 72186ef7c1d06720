package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.ChangeStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.theme.Theme;
import counterstep.implied.ImpliedLink;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Proposed links in the window, with real mouse and keys. */
final class ProposedLinksTest {
    private static final LinkEnds RELEASE = ends(1, 2);
    private static final LinkEnds AWAY_AND_BACK = ends(2, 3);
    private static final LinkEnds HOLD = ends(3, 4);

    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private Desk desk;
    private FrameFixture frame;

    private static LinkEnds ends(int before, int after) {
        return new LinkEnds(new StepId("s" + before), new StepId("s" + after));
    }

    private static Procedure lid() {
        return Sketch.of()
                .inAnyOrder()
                .screws("f1", 4)
                .part("p1", "f1", "", "")
                .steps("remove f1", "remove p1", "reinstall p1", "reinstall f1")
                .procedure();
    }

    @BeforeEach
    void open() {
        Workbench workbench =
                GuiActionRunner.execute(
                        () -> {
                            Theme.LIGHT.show();
                            desk = Desk.of(DocumentWork.blank());
                            return new Workbench(desk);
                        });
        frame = new FrameFixture(robot, workbench.frame());
        frame.show();
        opened(lid());
    }

    @AfterEach
    void close() {
        robot.cleanUp();
    }

    private void opened(Procedure procedure) {
        GuiActionRunner.execute(() -> desk.opened(procedure, Optional.empty()));
        settle();
    }

    private void settle() {
        robot.waitForIdle();
        Pause.pause(
                new Condition("analysis of the newest state") {
                    @Override
                    public boolean test() {
                        return ofDesk(ProposedLinksTest::analysed);
                    }
                });
        robot.waitForIdle();
    }

    private static boolean analysed(Desk desk) {
        return desk.analysis()
                .filter(newest -> newest.generation() == desk.state().generation())
                .isPresent();
    }

    private <T> T ofDesk(Function<Desk, T> answer) {
        return GuiActionRunner.execute(() -> answer.apply(desk));
    }

    private List<String> links() {
        settle();
        return ofDesk(d -> d.state().procedure().links()).stream()
                .map(link -> link.before() + " " + link.after() + " " + link.origin().word())
                .sorted()
                .toList();
    }

    private List<LinkEnds> proposals() {
        settle();
        return ofDesk(d -> d.analysis().orElseThrow().implied().proposals()).stream()
                .map(ImpliedLink::ends)
                .toList();
    }

    private void select(Selection selection) {
        GuiActionRunner.execute(() -> desk.select(selection));
        robot.waitForIdle();
    }

    private void draw(String command) {
        frame.menuItemWithPath("Draw", command).click();
        settle();
    }

    @Test
    void allProposalsAreAcceptedFromTheMenuInOneUndo() {
        assertEquals(List.of(RELEASE, HOLD, AWAY_AND_BACK), proposals());
        draw("Accept proposed links");
        assertEquals(List.of("s1 s2 implied", "s2 s3 implied", "s3 s4 implied"), links());
        assertEquals(List.of(), proposals());
        assertEquals(Optional.of("Accept 3 proposed links"), ofDesk(Desk::undoName));
        frame.button("Undo").click();
        assertEquals(List.of(), links());
    }

    @Test
    void onlyTheProposalsAtTheSelectedStepAreAccepted() {
        select(Selection.of(HOLD.after()));
        draw("Accept proposed links");
        assertEquals(List.of("s3 s4 implied"), links());
        assertEquals(List.of(RELEASE, AWAY_AND_BACK), proposals());
    }

    @Test
    void detailsTellTheReasonOfAProposalAndAcceptIt() {
        select(Selection.of(RELEASE));
        frame.label("origin of the link").requireText("origin: proposed");
        frame.textBox("reason of the link").requireText("P1 part is held by f1 screws.");
        frame.button("Accept link").click();
        assertEquals(List.of("s1 s2 implied"), links());
        assertEquals(Selection.of(RELEASE), ofDesk(d -> d.state().selection()));
        frame.label("origin of the link").requireText("origin: implied");
        frame.button("Delete link").click();
        assertEquals(List.of(), links());
    }

    @Test
    void detailsTellThatADrawnLinkFollowsFromOthersOrIsTurnedRound() {
        opened(
                lid().draft()
                        .links(
                                List.of(
                                        drawn(RELEASE),
                                        drawn(AWAY_AND_BACK),
                                        drawn(ends(1, 3)),
                                        drawn(ends(4, 3))))
                        .procedure());
        select(Selection.of(ends(1, 3)));
        frame.textBox("reason of the link").requireText("Follows from 1 → 2 → 3.");
        select(Selection.of(ends(4, 3)));
        frame.textBox("reason of the link")
                .requireText("The items ask for the opposite. P1 part is held by f1 screws.");
    }

    private static Link drawn(LinkEnds ends) {
        return Link.drawn(ends.before(), ends.after());
    }

    @Test
    void enterOnASelectedProposalAcceptsIt() {
        select(Selection.of(AWAY_AND_BACK));
        GuiActionRunner.execute(
                () -> robot.finder().findByName("step graph").requestFocusInWindow());
        robot.waitForIdle();
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals(List.of("s2 s3 implied"), links());
    }

    @Test
    void whatIsProposedNoMoreDoesNotStaySelected() {
        select(Selection.of(AWAY_AND_BACK));
        GuiActionRunner.execute(
                () -> desk.apply(new ChangeStep(emptied(AWAY_AND_BACK.after()), "Change step")));
        settle();
        assertEquals(Selection.NONE, ofDesk(d -> d.state().selection()));
    }

    private Step emptied(StepId step) {
        return desk.state().procedure().step(step).draft().actions(List.of()).step();
    }

    @Test
    void linksAsToldGiveWayToImpliedOnesInOneUndo() {
        List<Link> chain = new ArrayList<>();
        for (int step = 1; step < 4; step++) {
            LinkEnds ends = ends(step, step + 1);
            chain.add(new Link(ends.before(), ends.after(), LinkOrigin.AS_TOLD, Extras.NONE));
        }
        opened(lid().draft().links(chain).procedure());
        assertEquals(List.of(), proposals());
        draw("Drop links as told");
        assertEquals(List.of("s1 s2 implied", "s2 s3 implied", "s3 s4 implied"), links());
        assertTrue(frame.button("Undo").isEnabled());
        frame.button("Undo").click();
        assertEquals(List.of("s1 s2 as told", "s2 s3 as told", "s3 s4 as told"), links());
    }
}
