package counterstep.editor.window;

import counterstep.check.Finding;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.editor.remembered.RecentFile;
import counterstep.editor.remembered.Remembered;
import counterstep.editor.start.Sample;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.Robot;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.SwingUtilities;

/** Makes the pictures of the documentation: the window on each sample, light and dark. */
public final class Screenshots {
    /** A sample and the step that is selected on its picture. */
    private record Shot(String sample, String step) {}

    private static final List<Shot> SHOTS =
            List.of(
                    new Shot("orrin-c4-stick-unit", "s16"),
                    new Shot("orrin-c4-stick-unit-hurried", "s16"),
                    new Shot("bench-supply-fan", "s5"));

    private Screenshots() {}

    /**
     * Writes the pictures.
     *
     * @param arguments the folder of the samples, the folder for the pictures
     */
    public static void main(String[] arguments) throws Exception {
        Path samples = Path.of(arguments[0]);
        Path pictures = Files.createDirectories(Path.of(arguments[1]));
        for (Theme theme : Theme.values()) {
            for (Shot shot : SHOTS) {
                Path file = samples.resolve(shot.sample() + ".procedure.json");
                String name = shot.sample() + "-" + theme.name().toLowerCase(Locale.ROOT);
                JFrame window = window(theme, file, shot.step());
                if (shot.sample().endsWith("hurried")) {
                    Picture.write(window.getRootPane(), pictures, name);
                } else {
                    Picture.writeSmall(window.getRootPane(), pictures, name);
                }
                SwingUtilities.invokeAndWait(window::dispose);
            }
            String name = "start-" + theme.name().toLowerCase(Locale.ROOT);
            JFrame start = startPage(theme, samples);
            Picture.write(start.getRootPane(), pictures, name);
            SwingUtilities.invokeAndWait(start::dispose);
        }
        new PanelPictures(samples, pictures).write();
        System.exit(0);
    }

    private static JFrame startPage(Theme theme, Path samples) throws Exception {
        Instant now = Instant.parse("2026-01-20T14:02:00Z");
        Remembered remembered = new Remembered(new PreferencesInMemory());
        remembered.theme(theme);
        remembered.window(new Rectangle(40, 40, 1200, 830));
        int days = SHOTS.size();
        for (Shot shot : SHOTS) {
            Path file = samples.resolve(shot.sample() + ".procedure.json");
            remembered.note(recent(file, now.minus(Duration.ofDays(days--))));
        }
        Workbench[] opened = new Workbench[1];
        SwingUtilities.invokeAndWait(
                () -> {
                    theme.show();
                    opened[0] = new Workbench(Desk.of(DocumentWork.blank()));
                    Clock clock = Clock.fixed(now, ZoneOffset.UTC);
                    opened[0].begin(
                            new Home(remembered, Path.of("no-such-folder"), clock, act -> {}),
                            Optional.empty());
                });
        Robot robot = new Robot();
        robot.mouseMove(1599, 999);
        AtomicInteger read = new AtomicInteger();
        while (read.get() < Sample.values().length) { // they are read in the background
            robot.waitForIdle();
            SwingUtilities.invokeAndWait(() -> read.set(samplesShown(opened[0].frame())));
        }
        robot.waitForIdle();
        return opened[0].frame();
    }

    /** How many sample cards say how many steps their sample has. */
    private static int samplesShown(Container within) {
        int shown = 0;
        for (Component part : within.getComponents()) {
            if (part instanceof JLabel label && "sample size".equals(label.getName())) {
                shown += label.getText().isBlank() ? 0 : 1;
            } else if (part instanceof Container inner) {
                shown += samplesShown(inner);
            }
        }
        return shown;
    }

    private static RecentFile recent(Path file, Instant seen) {
        Procedure procedure = ProcedureFile.read(file);
        return new RecentFile(
                file,
                procedure.titleBlock().title(),
                procedure.steps().size() + " steps",
                seen,
                Review.of(procedure).findings().stream()
                        .map(Finding::severity)
                        .min(Comparator.naturalOrder()));
    }

    private static JFrame window(Theme theme, Path file, String step) throws Exception {
        Procedure procedure = ProcedureFile.read(file);
        CountDownLatch analysed = new CountDownLatch(1);
        Workbench[] opened = new Workbench[1];
        SwingUtilities.invokeAndWait(
                () -> {
                    theme.show();
                    Desk desk = Desk.of(procedure);
                    opened[0] = new Workbench(desk);
                    desk.opened(procedure, Optional.of(file));
                    opened[0].frame().setVisible(true);
                    desk.onAnalysis(
                            analysis -> {
                                if (!analysis.renewing() && analysis.fixes().isPresent()) {
                                    analysed.countDown();
                                }
                            });
                });
        analysed.await();
        Robot robot = new Robot();
        robot.mouseMove(1599, 999); // a pointer over the drawing would keep it where it is
        robot.waitForIdle(); // the window takes its size and fits the drawing into it
        SwingUtilities.invokeAndWait(() -> opened[0].select(selection(procedure, step)));
        SwingUtilities.invokeAndWait(() -> chooseFinding(opened[0].frame(), "In some order"));
        robot.waitForIdle();
        return opened[0].frame();
    }

    /** Chooses a finding whose words begin so, if there is one: then it shows how it goes wrong. */
    private static void chooseFinding(Container within, String words) {
        for (Component part : within.getComponents()) {
            if (part instanceof JList<?> list && "findings".equals(list.getName())) {
                for (int row = 0; row < list.getModel().getSize(); row++) {
                    if (list.getModel().getElementAt(row).toString().contains(words)) {
                        list.setSelectedIndex(row);
                        list.ensureIndexIsVisible(row);
                    }
                }
            } else if (part instanceof Container inner) {
                chooseFinding(inner, words);
            }
        }
    }

    private static Selection selection(Procedure procedure, String step) {
        StepId id = new StepId(step);
        boolean there = procedure.steps().stream().anyMatch(each -> each.id().equals(id));
        return Selection.of(there ? id : procedure.steps().get(4).id());
    }
}
