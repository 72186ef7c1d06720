package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Desk;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.testing.Samples;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files come from another window by drag and drop, as from the desktop's own file window. */
final class FileDropTest {
    @TempDir private Path folder;

    private StartedWindow window;
    private Path fan;
    private Path pump;
    private JFrame files;

    @BeforeEach
    void open() throws IOException {
        fan = copied("fan.procedure.json");
        pump = copied("pump.procedure.json");
        window =
                new StartedWindow(
                        new PreferencesInMemory(), folder.resolve("data"), Optional.of(fan));
        window.untilOpen(fan);
    }

    private Path copied(String name) throws IOException {
        return Files.copy(Samples.file(Samples.SUPPLY_FAN), folder.resolve(name));
    }

    @AfterEach
    void close() {
        GuiActionRunner.execute(files::dispose);
        window.cleanUp();
    }

    private record FileList(List<Path> paths) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return paths.stream().map(Path::toFile).toList();
        }
    }

    private JLabel shown(List<Path> paths) {
        JLabel label = new JLabel("a file");
        label.setPreferredSize(new Dimension(160, 60));
        label.setTransferHandler(
                new TransferHandler() {
                    @Override
                    public int getSourceActions(JComponent component) {
                        return COPY;
                    }

                    @Override
                    protected Transferable createTransferable(JComponent component) {
                        return new FileList(paths);
                    }
                });
        label.addMouseMotionListener(
                new MouseAdapter() {
                    @Override
                    public void mouseDragged(MouseEvent event) {
                        label.getTransferHandler().exportAsDrag(label, event, TransferHandler.COPY);
                    }
                });
        files = new JFrame("files");
        files.add(label);
        files.pack();
        files.setAlwaysOnTop(true);
        files.setVisible(true);
        return label;
    }

    private void drop(Component target, Path... paths) {
        JLabel label = GuiActionRunner.execute(() -> shown(List.of(paths)));
        StartedWindow.until(
                "the files are seen", () -> GuiActionRunner.execute(() -> files.isActive()));
        Point to =
                GuiActionRunner.execute(
                        () -> new Point(target.getWidth() / 2, target.getHeight() / 2));
        window.robot.pressMouse(label, new Point(80, 30), MouseButton.LEFT_BUTTON);
        window.robot.moveMouse(label, new Point(90, 36));
        window.robot.moveMouse(label, new Point(110, 50));
        window.robot.moveMouse(target, to);
        window.robot.moveMouse(target, new Point(to.x + 2, to.y + 2));
        window.robot.releaseMouse(MouseButton.LEFT_BUTTON);
    }

    @Test
    void aFileDroppedOnTheStepGraphIsOpened() {
        drop(window.robot.finder().findByName("step graph", true), pump);
        window.untilOpen(pump);
    }

    @Test
    void listsLetItThroughAndUnsavedWorkIsAskedFor() {
        window.retitle("Mine");
        drop(window.frame.list("items").target(), pump);
        window.answer("Keep open");
        assertTrue(window.ofDesk(Desk::unsaved));
        drop(window.frame.list("items").target(), pump);
        window.answer("Discard");
        window.untilOpen(pump);
    }
}
