package counterstep.editor.window;

import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.remembered.Side;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Robot;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;

/** Makes the pictures of the panels, each at its side of the window, light and dark. */
final class PanelPictures {
    /** Panels that show a procedure without faults best: it has photos. */
    private static final List<String> OF_THE_FAN = List.of("Photos", "Preview", "Text", "Blocks");

    /** A step of the fan that has a photo with callouts. */
    private static final String WITH_PHOTO = "s3";

    private static final Dimension LARGE = new Dimension(1440, 900);
    private static final Dimension SMALL = new Dimension(1100, 700);
    private static final List<String> IN_A_SMALL_WINDOW = List.of("On the bench", "Timetable");

    private final Path samples;
    private final Path pictures;

    PanelPictures(Path samples, Path pictures) {
        this.samples = samples;
        this.pictures = pictures;
    }

    /** Writes the pictures of all panels. */
    void write() throws Exception {
        for (Theme theme : Theme.values()) {
            write(theme, "orrin-c4-stick-unit-hurried", "s16", false);
            write(theme, "bench-supply-fan", WITH_PHOTO, true);
            Workbench small = opened(theme, "orrin-c4-stick-unit-hurried", SMALL);
            for (String panel : IN_A_SMALL_WINDOW) {
                choose(small, panel, "s16");
                Picture.writeSmall(
                        small.frame().getRootPane(), pictures, name(panel, theme) + "-1100");
            }
            SwingUtilities.invokeAndWait(small.frame()::dispose);
        }
    }

    private void write(Theme theme, String sample, String step, boolean fan) throws Exception {
        Workbench window = opened(theme, sample, LARGE);
        for (String panel : names()) {
            if (OF_THE_FAN.contains(panel) == fan) {
                choose(window, panel, step);
                if (panel.equals("Preview")) {
                    untilThePageIsThere(window);
                }
                Picture.write(sideOf(window, panel), pictures, name(panel, theme));
            }
        }
        SwingUtilities.invokeAndWait(window.frame()::dispose);
    }

    /** The page comes from another toolkit, which takes its time to load and to paint. */
    private static void untilThePageIsThere(Workbench window) throws Exception {
        Robot robot = new Robot();
        boolean[] there = new boolean[1];
        while (!there[0]) {
            robot.delay(1000);
            SwingUtilities.invokeAndWait(() -> there[0] = isShown(window.frame(), "preview page"));
        }
        robot.delay(5000);
    }

    private static boolean isShown(Container within, String name) {
        return Stream.of(within.getComponents())
                .anyMatch(
                        part ->
                                name.equals(part.getName()) && part.isShowing()
                                        || part instanceof Container inner && isShown(inner, name));
    }

    private static String name(String panel, Theme theme) {
        return panel.toLowerCase(Locale.ROOT).replace(' ', '-')
                + "-"
                + theme.name().toLowerCase(Locale.ROOT);
    }

    private static List<String> names() throws Exception {
        List<String> names = new ArrayList<>();
        SwingUtilities.invokeAndWait(
                () ->
                        panels(Desk.of(DocumentWork.blank())).all().stream()
                                .map(DeskPanel::title)
                                .forEach(names::add));
        return names;
    }

    private static Panels panels(Desk desk) {
        return new Panels(desk, new PhotoIntake(desk, sentence -> {}));
    }

    private Workbench opened(Theme theme, String sample, Dimension size) throws Exception {
        Path file = samples.resolve(sample + ".procedure.json");
        Procedure procedure = ProcedureFile.read(file);
        CountDownLatch analysed = new CountDownLatch(1);
        Workbench[] opened = new Workbench[1];
        SwingUtilities.invokeAndWait(
                () -> {
                    theme.show();
                    Desk desk = Desk.of(procedure);
                    opened[0] = new Workbench(desk);
                    desk.opened(procedure, Optional.of(file));
                    opened[0].frame().setSize(size);
                    opened[0].frame().setVisible(true);
                    desk.onAnalysis(
                            analysis -> {
                                if (!analysis.renewing() && analysis.fixes().isPresent()) {
                                    analysed.countDown();
                                }
                            });
                });
        analysed.await();
        return opened[0];
    }

    private static void choose(Workbench window, String panel, String step) throws Exception {
        SwingUtilities.invokeAndWait(
                () -> {
                    entry(window, panel).doClick();
                    window.select(Selection.of(new StepId(step)));
                });
    }

    private static JMenuItem entry(Workbench window, String panel) {
        return Stream.of(window.frame().getJMenuBar().getComponents())
                .filter(JMenu.class::isInstance)
                .flatMap(menu -> Stream.of(((JMenu) menu).getMenuComponents()))
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .filter(item -> panel.equals(item.getName()))
                .findFirst()
                .orElseThrow();
    }

    /** The tabs among which a panel is seen, with what stands beside it. */
    private static Component sideOf(Workbench window, String panel) {
        return Stream.of(Side.values())
                .flatMap(side -> tabs(window.frame(), "panels " + side.word()).stream())
                .filter(tabs -> tabs.getTitleAt(tabs.getSelectedIndex()).startsWith(panel))
                .map(tabs -> tabs.getName().equals("panels below") ? tabs.getParent() : tabs)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<JTabbedPane> tabs(Container within, String name) {
        for (Component part : within.getComponents()) {
            if (part instanceof JTabbedPane tabs && name.equals(tabs.getName())) {
                return Optional.of(tabs);
            }
            if (part instanceof Container inner) {
                Optional<JTabbedPane> found = tabs(inner, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
