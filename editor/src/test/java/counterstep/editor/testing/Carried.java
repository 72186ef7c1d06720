package counterstep.editor.testing;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * What another program carries by drag or clipboard.
 *
 * @param flavor how it is offered
 * @param content what is handed over
 */
public record Carried(DataFlavor flavor, Object content) implements Transferable {
    /** Files. */
    public static Carried files(Path... paths) {
        return files(Arrays.asList(paths));
    }

    /** Files. */
    public static Carried files(List<Path> paths) {
        return new Carried(
                DataFlavor.javaFileListFlavor, paths.stream().map(Path::toFile).toList());
    }

    /** An image that has no file. */
    public static Carried image(Image image) {
        return new Carried(DataFlavor.imageFlavor, image);
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {flavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor asked) {
        return asked.equals(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor asked) {
        return content;
    }
}
