package counterstep.editor.find;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.details.PanelWindow;
import counterstep.model.Procedure;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class FindBarTest {
    private static final Procedure FAN = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));

    private FindBar bar;
    private PanelWindow window;

    private DeskPanel bar(Desk desk) {
        bar = new FindBar(desk);
        return bar;
    }

    @BeforeEach
    void open() {
        window = new PanelWindow(FAN, this::bar);
        window.onDesk(desk -> bar.enter());
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void type(String words) {
        window.frame().textBox("find").selectAll().enterText(words);
    }

    private Set<Integer> selected() {
        Procedure open = window.procedure(); // waits until all events are done
        AtomicReference<Set<Integer>> numbers = new AtomicReference<>();
        window.onDesk(
                desk ->
                        numbers.set(
                                desk.state().selection().steps().stream()
                                        .map(open::pageNumber)
                                        .collect(Collectors.toSet())));
        return numbers.get();
    }

    private void says(String words) {
        window.frame().label("found").requireText(words);
    }

    @Test
    void whereNoStepSaysItTheSelectionStays() {
        type("9");
        assertEquals(Set.of(9), selected());
        type("zebra");
        says("no step says that");
        assertEquals(Set.of(9), selected());
    }

    @Test
    void whatIsFoundFollowsTheDocument() {
        type("zebra");
        says("no step says that");
        window.onDesk(desk -> desk.apply(new RenameStep(FAN.steps().get(4).id(), "Zebra off")));
        says("1 found");
        type("zebra o");
        says("1 of 1");
        assertEquals(Set.of(5), selected());
    }

    @Test
    void buttonsGoOnAndBackAroundTheEnd() {
        type("capacitors");
        says("1 of 3");
        window.frame().button("find.Previous").click();
        says("3 of 3");
        assertEquals(Set.of(4), selected());
        window.frame().button("find.Next").click();
        assertEquals(Set.of(2), selected());
        window.frame().button("find.Close").click();
        window.frame().robot().waitForIdle();
        assertEquals(false, bar.component().isVisible());
    }
}
