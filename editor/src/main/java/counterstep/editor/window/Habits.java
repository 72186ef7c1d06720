package counterstep.editor.window;

import counterstep.check.Finding;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.remembered.RecentFile;
import counterstep.editor.remembered.Remembered;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import counterstep.model.Revision;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;

/** The window comes up as it was left, and the files that lay open are noted. */
final class Habits {
    private final JFrame frame;
    private final PanelDock dock;
    private final Home home;
    private final Remembered remembered;

    Habits(JFrame frame, PanelDock dock, Home home) {
        this.frame = frame;
        this.dock = dock;
        this.home = home;
        this.remembered = home.remembered();
    }

    /** Before the window is shown: gives it the place, size and panels it had. */
    void restore() {
        Optional<Rectangle> place = remembered.window().filter(Habits::canBeReached);
        frame.setBounds(place.orElseGet(this::inTheMiddle));
        frame.addNotify();
        frame.validate();
        dock.splits().restore(remembered);
        remembered.arrangement().ifPresent(dock::arrange);
        if (remembered.maximized()) {
            frame.setExtendedState(Frame.MAXIMIZED_BOTH);
        }
        frame.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowDeactivated(WindowEvent event) {
                        remember();
                    }
                });
    }

    /** Chosen here, since a place that the window system chooses may be told too late. */
    private Rectangle inTheMiddle() {
        Rectangle screen =
                GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        int width = Math.min(frame.getWidth(), screen.width);
        int height = Math.min(frame.getHeight(), screen.height);
        return new Rectangle(
                screen.x + (screen.width - width) / 2,
                screen.y + (screen.height - height) / 2,
                width,
                height);
    }

    /** Whether enough of a window would lie on a screen that is still there. */
    static boolean canBeReached(Rectangle place) {
        GraphicsDevice[] screens =
                GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices();
        Rectangle grip = new Rectangle(place.x, place.y, place.width, 24);
        return Arrays.stream(screens)
                .map(GraphicsDevice::getDefaultConfiguration)
                .map(GraphicsConfiguration::getBounds)
                .map(grip::intersection)
                .anyMatch(shown -> shown.width >= 100 && shown.height >= 12);
    }

    /** Takes note of how things are now. */
    void remember() {
        remembered.theme(Theme.current());
        boolean maximized = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) != 0;
        remembered.maximized(maximized);
        if (!maximized) {
            remembered.window(frame.getBounds());
        }
        dock.splits().remember(remembered);
        remembered.arrangement(dock.arrangement());
    }

    /** Notes what lies open whenever it is saved and examined. */
    void noteFilesOf(Desk desk) {
        desk.onAnalysis(analysis -> note(desk, analysis));
        desk.onState(state -> desk.analysis().ifPresent(analysis -> note(desk, analysis)));
    }

    private void note(Desk desk, Analysis analysis) {
        boolean newest = analysis.generation() == desk.state().generation();
        if (newest && !desk.unsaved()) {
            desk.state()
                    .file()
                    .ifPresent(file -> remembered.note(recent(file.toAbsolutePath(), analysis)));
        }
    }

    private RecentFile recent(Path file, Analysis analysis) {
        Procedure procedure = analysis.procedure();
        return new RecentFile(
                file,
                procedure.titleBlock().title(),
                about(procedure),
                home.clock().instant(),
                analysis.review().findings().stream()
                        .filter(Finding::open)
                        .map(Finding::severity)
                        .min(Comparator.naturalOrder()));
    }

    private static String about(Procedure procedure) {
        List<Revision> revisions = procedure.revisions();
        int steps = procedure.steps().size();
        String size = steps == 1 ? "1 step" : steps + " steps";
        return revisions.isEmpty()
                ? size
                : "revision " + revisions.get(revisions.size() - 1).number() + ", " + size;
    }

    /** A file that could not be opened is not offered again. */
    void forget(Path file) {
        remembered.forget(file.toAbsolutePath());
    }
}
