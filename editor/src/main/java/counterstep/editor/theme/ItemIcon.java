package counterstep.editor.theme;

import counterstep.export.shape.ItemShape;
import counterstep.export.shape.Mark;
import counterstep.model.Item;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.Icon;

/** The mark of an item as an icon, in the text colour of what it stands on. */
public final class ItemIcon implements Icon {
    private static final int SIDE = (int) (2 * Mark.REACH);

    private final Mark mark;

    /** The mark of an item's kind, drive or connector. */
    public ItemIcon(Item item) {
        this.mark = ItemShape.of(item);
    }

    @Override
    public int getIconWidth() {
        return SIDE;
    }

    @Override
    public int getIconHeight() {
        return SIDE;
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setColor(component.getForeground());
        mark.paint(own, x + Mark.REACH, y + Mark.REACH, 1);
        own.dispose();
    }
}
