package counterstep.editor.items;

import counterstep.editor.desk.CarriedItem;
import java.awt.datatransfer.Transferable;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.TransferHandler;

/** Lets the chosen line of the register be dragged onto a step. */
final class ItemDrag extends TransferHandler {
    private final transient JList<ItemRow> list;

    private ItemDrag(JList<ItemRow> list) {
        this.list = list;
    }

    /** From now on lines can be dragged out. */
    static void from(JList<ItemRow> list) {
        list.setTransferHandler(new ItemDrag(list));
        list.setDragEnabled(true);
    }

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        ItemRow row = list.getSelectedValue();
        return row == null ? null : new CarriedItem(row.item().id());
    }
}
