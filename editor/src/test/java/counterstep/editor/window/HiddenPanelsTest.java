package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import counterstep.edit.RenameStep;
import counterstep.editor.analysis.Analyst;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.OnEventThread;
import counterstep.editor.desk.Selection;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.BigProcedure;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * What panels cost that nobody sees, told in bytes that the event thread takes up for an edit and
 * its findings: to build a list or a form of 200 steps takes hundreds of thousands.
 */
@ExtendWith(OnEventThread.class)
final class HiddenPanelsTest {
    private static final int EDITS = 5;
    private static final long NEXT_TO_NOTHING = 30_000;

    private final Procedure procedure = BigProcedure.withUnits(20);
    private final List<Runnable> tellings = new ArrayList<>();

    /** A desk whose analyses are made elsewhere and told when asked for. */
    private Desk desk() {
        return new Desk(procedure, new Analyst(HiddenPanelsTest::elsewhere, tellings::add));
    }

    private static void elsewhere(Runnable work) {
        Thread thread = new Thread(work, "elsewhere");
        thread.start();
        try {
            thread.join();
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    private void tell() {
        List.copyOf(tellings).forEach(Runnable::run);
        tellings.clear();
    }

    private void edit(Desk desk, int run) {
        StepId step = procedure.steps().get(run).id();
        desk.apply(new RenameStep(step, "Named anew"));
        desk.select(Selection.of(step));
        tell();
    }

    /** The fewest bytes that an edit took; what is done once, for the first, does not count. */
    private long cost(Desk desk) {
        tell();
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long fewest = Long.MAX_VALUE;
        for (int run = 0; run < EDITS; run++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            edit(desk, run);
            fewest = Math.min(fewest, threads.getCurrentThreadAllocatedBytes() - before);
        }
        return fewest;
    }

    @Test
    void anEditOfALargeDocumentCostsHiddenPanelsNextToNothing() {
        Theme.LIGHT.show();
        long none = cost(desk());
        Desk desk = desk();
        List<DeskPanel> hidden = new Panels(desk, new PhotoIntake(desk, said -> {})).all();
        long all = cost(desk);

        assertTrue(hidden.stream().noneMatch(panel -> panel.component().isShowing()));
        assertTrue(
                all - none < NEXT_TO_NOTHING,
                () -> "%d bytes without panels, %d with all hidden".formatted(none, all));
    }
}
