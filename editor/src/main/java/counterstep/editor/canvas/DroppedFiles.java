package counterstep.editor.canvas;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.dnd.DropTarget;
import java.awt.dnd.DropTargetAdapter;
import java.awt.dnd.DropTargetDropEvent;
import java.awt.dnd.DropTargetEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TooManyListenersException;
import javax.swing.JComponent;
import javax.swing.TransferHandler.TransferSupport;

/**
 * Files that another program drops.
 *
 * @param paths where they lie
 */
record DroppedFiles(List<Path> paths) {
    private static final List<String> PICTURES = List.of(".jpg", ".jpeg", ".png", ".gif");

    static DroppedFiles of(Transferable dropped) throws UnsupportedFlavorException, IOException {
        List<Path> paths = new ArrayList<>();
        if (dropped.getTransferData(DataFlavor.javaFileListFlavor) instanceof List<?> files) {
            for (Object each : files) {
                if (each instanceof File file) {
                    paths.add(file.toPath());
                }
            }
        }
        return new DroppedFiles(List.copyOf(paths));
    }

    static boolean isFiles(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    /** What files they are is told only when they are dropped. */
    static boolean perhapsPhotos(TransferSupport support) {
        return isFiles(support) || support.isDataFlavorSupported(DataFlavor.imageFlavor);
    }

    boolean arePhotos() {
        return !paths.isEmpty() && paths.stream().allMatch(DroppedFiles::isPhoto);
    }

    private static boolean isPhoto(Path path) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        return PICTURES.stream().anyMatch(name::endsWith);
    }

    /** Tells when a drag goes elsewhere or ends. */
    static void whenLeft(JComponent target, Runnable told) {
        DropTarget drops = target.getDropTarget();
        if (drops == null) {
            return; // without a display nothing is dropped
        }
        try {
            drops.addDropTargetListener(
                    new DropTargetAdapter() {
                        @Override
                        public void dragExit(DropTargetEvent event) {
                            told.run();
                        }

                        @Override
                        public void drop(DropTargetDropEvent event) {
                            told.run();
                        }
                    });
        } catch (TooManyListenersException taken) {
            throw new IllegalStateException("the target takes one listener only", taken);
        }
    }
}
