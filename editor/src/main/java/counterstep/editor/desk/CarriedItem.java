package counterstep.editor.desk;

import counterstep.model.ItemId;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;

/**
 * An item on its way from one panel to another, within the window.
 *
 * @param item which
 */
public record CarriedItem(ItemId item) implements Transferable {
    /** How a panel knows that it is offered an item. */
    public static final DataFlavor FLAVOR =
            new DataFlavor(
                    DataFlavor.javaJVMLocalObjectMimeType
                            + ";class=\""
                            + CarriedItem.class.getName()
                            + "\"",
                    "item");

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {FLAVOR};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return FLAVOR.equals(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
        if (!isDataFlavorSupported(flavor)) {
            throw new UnsupportedFlavorException(flavor);
        }
        return this;
    }
}
