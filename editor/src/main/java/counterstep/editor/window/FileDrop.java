package counterstep.editor.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Takes a file that is dropped onto the window. */
final class FileDrop extends TransferHandler {
    private final transient Consumer<Path> open;

    private FileDrop(Consumer<Path> open) {
        this.open = open;
    }

    /** From now on a file dropped anywhere but into a field for text is opened. */
    static void onto(JFrame frame, Consumer<Path> open) {
        frame.setTransferHandler(new FileDrop(open));
        letThrough(frame.getRootPane());
    }

    /** Lists take no drops, and would refuse them in the name of the window. */
    private static void letThrough(Container parent) {
        for (Component child : parent.getComponents()) {
            if (child instanceof JList<?> list) {
                list.setDropTarget(null);
            }
            if (child instanceof Container container) {
                letThrough(container);
            }
        }
    }

    @Override
    public boolean canImport(TransferSupport support) {
        if (!support.isDrop() || !support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
            return false;
        }
        boolean canCopy = (support.getSourceDropActions() & COPY) != 0;
        if (canCopy) {
            support.setDropAction(COPY); // a move would let the other program delete the file
        }
        return canCopy;
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            Object dropped =
                    support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            if (dropped instanceof List<?> files
                    && files.size() == 1
                    && files.get(0) instanceof File file) {
                // a question asked here would hold up the other program until it is answered
                SwingUtilities.invokeLater(() -> open.accept(file.toPath()));
                return true;
            }
            return false;
        } catch (UnsupportedFlavorException | IOException gone) {
            return false;
        }
    }
}
