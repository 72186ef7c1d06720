package counterstep.editor.items;

import counterstep.editor.theme.ItemIcon;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import counterstep.model.Severity;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.SwingConstants;

/** Draws a line of the register: mark and name left, how many and off / back right. */
final class ItemRowRenderer extends JPanel implements ListCellRenderer<ItemRow> {
    private static final int HEIGHT = 26;

    private final JLabel name = PlainText.in(new JLabel());
    private final JLabel amount = new JLabel();
    private final JLabel off = figure(22);
    private final JLabel slash = figure(10);
    private final JLabel back = figure(22);

    ItemRowRenderer() {
        super(new BorderLayout(4, 0));
        JPanel figures = new JPanel(new FlowLayout(FlowLayout.TRAILING, 0, 0));
        figures.setOpaque(false);
        figures.add(amount);
        figures.add(off);
        figures.add(slash);
        figures.add(back);
        name.setIconTextGap(6);
        add(name, BorderLayout.CENTER);
        add(figures, BorderLayout.LINE_END);
    }

    private static JLabel figure(int width) {
        JLabel label = new JLabel();
        label.setHorizontalAlignment(SwingConstants.TRAILING);
        label.setPreferredSize(new Dimension(width, HEIGHT));
        return label;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends ItemRow> list,
            ItemRow row,
            int index,
            boolean selected,
            boolean focused) {
        setBorder(BorderFactory.createEmptyBorder(0, row.under() ? 20 : 16, 0, 12));
        name.setText(row.item().name());
        name.setIcon(row.under() ? new ItemIcon(row.item()) : null);
        name.setFont((row.under() ? Type.BODY : Type.BODY_STRONG).font());
        name.setForeground(Palette.INK.color());
        write(amount, row.amount(), Palette.SOFT);
        write(off, row.off(), Palette.INK);
        write(slash, row.off().isEmpty() && row.back().isEmpty() ? "" : "/", Palette.FAINT);
        write(back, row.back(), Palette.INK);
        back.setIcon(row.fault() ? new SeverityMark(Severity.ERROR) : null);
        back.setText(row.fault() ? "" : row.back());
        setBackground(ground(selected, row.fault()));
        getAccessibleContext().setAccessibleName(row.toString());
        return this;
    }

    private static void write(JLabel label, String text, Palette colour) {
        label.setText(text);
        label.setFont(Type.SMALL.font());
        label.setForeground(colour.color());
    }

    private static java.awt.Color ground(boolean selected, boolean fault) {
        if (selected) {
            return Palette.ACCENT_GROUND.color();
        }
        return (fault ? Palette.ERROR_GROUND : Palette.PANEL).color();
    }
}
