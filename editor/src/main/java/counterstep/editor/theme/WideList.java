package counterstep.editor.theme;

import java.awt.Component;
import java.awt.event.MouseEvent;
import javax.swing.JList;
import javax.swing.JToolTip;
import javax.swing.ListModel;

/**
 * A list whose lines are as wide as what shows it, never wider: long names are shortened instead of
 * pushing what stands at their right out of sight. The pointer on a shortened line shows it whole.
 *
 * @param <E> what it lists
 */
public final class WideList<E> extends JList<E> {
    /** A list of that model. */
    public WideList(ListModel<E> model) {
        super(model);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int at = locationToIndex(event.getPoint());
        return at >= 0 && isShortened(at)
                ? getModel().getElementAt(at).toString()
                : super.getToolTipText(event);
    }

    private boolean isShortened(int at) {
        Component line =
                getCellRenderer()
                        .getListCellRendererComponent(
                                this, getModel().getElementAt(at), at, false, false);
        return line.getPreferredSize().width > getWidth();
    }

    @Override
    public JToolTip createToolTip() {
        JToolTip tip = PlainText.in(super.createToolTip());
        tip.setComponent(this);
        return tip;
    }
}
