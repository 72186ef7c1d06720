package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Robot;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.SwingUtilities;

/**
 * Makes the pictures of the panels in the row below, light and dark, in a large and a small window.
 */
final class PanelPictures {
    private static final List<String> PANELS = List.of("On the bench", "Timetable");
    private static final List<Dimension> SIZES =
            List.of(new Dimension(1440, 900), new Dimension(1100, 700));

    private PanelPictures() {}

    /** Writes one picture a panel, theme and size. */
    static void write(Path sample, String step, Path pictures) throws Exception {
        for (Theme theme : Theme.values()) {
            for (Dimension size : SIZES) {
                Workbench window = opened(theme, sample, size);
                for (String panel : PANELS) {
                    BufferedImage picture = picture(window, panel, step);
                    String name =
                            "%s-%s-%d.png"
                                    .formatted(
                                            panel.toLowerCase(Locale.ROOT).replace(' ', '-'),
                                            theme.name().toLowerCase(Locale.ROOT),
                                            size.width);
                    save(picture, pictures.resolve(name));
                }
                SwingUtilities.invokeAndWait(window.frame()::dispose);
            }
        }
    }

    private static Workbench opened(Theme theme, Path sample, Dimension size) throws Exception {
        Procedure procedure = ProcedureFile.read(sample);
        CountDownLatch analysed = new CountDownLatch(1);
        Workbench[] opened = new Workbench[1];
        SwingUtilities.invokeAndWait(
                () -> {
                    theme.show();
                    Desk desk = Desk.of(procedure);
                    opened[0] = new Workbench(desk);
                    desk.opened(procedure, Optional.of(sample));
                    opened[0].frame().setSize(size);
                    opened[0].frame().setVisible(true);
                    desk.onAnalysis(
                            analysis -> {
                                if (!analysis.renewing()) {
                                    analysed.countDown();
                                }
                            });
                });
        analysed.await();
        return opened[0];
    }

    private static BufferedImage picture(Workbench window, String panel, String step)
            throws Exception {
        Robot robot = new Robot();
        robot.mouseMove(1599, 999);
        SwingUtilities.invokeAndWait(
                () -> {
                    entry(window, panel).doClick();
                    window.select(Selection.of(new StepId(step)));
                });
        robot.waitForIdle();
        BufferedImage[] image = new BufferedImage[1];
        SwingUtilities.invokeAndWait(() -> image[0] = painted(window.frame().getRootPane()));
        return image[0];
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

    private static BufferedImage painted(JComponent root) {
        BufferedImage image =
                new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        root.paint(graphics);
        graphics.dispose();
        return image;
    }

    private static void save(BufferedImage image, Path file) throws IOException {
        ImageIO.write(image, "png", file.toFile());
    }
}
