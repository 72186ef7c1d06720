package counterstep.editor.photos;

import java.awt.Component;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.util.List;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks for photo files. */
final class PhotoChooser {
    private PhotoChooser() {}

    /** The chosen files, as if they had been dropped; empty if it was cancelled. */
    static Optional<Transferable> ask(Component owner) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Add photos");
        chooser.setMultiSelectionEnabled(true);
        chooser.setFileFilter(
                new FileNameExtensionFilter("Photos (jpg, png, gif)", "jpg", "jpeg", "png", "gif"));
        return chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION
                ? Optional.of(new Files(List.of(chooser.getSelectedFiles())))
                : Optional.empty();
    }

    private record Files(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!isDataFlavorSupported(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return files;
        }
    }
}
