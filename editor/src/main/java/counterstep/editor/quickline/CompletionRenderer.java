package counterstep.editor.quickline;

import counterstep.editor.theme.ItemIcon;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.shorthand.Completion;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Draws a way to go on: the mark of its item, what is offered, what that is. */
final class CompletionRenderer extends JPanel implements ListCellRenderer<Completion> {
    private static final int HEIGHT = 26;
    private static final int OFFERED = 190;

    private final JLabel offered = PlainText.in(new JLabel());
    private final JLabel explained = PlainText.in(new JLabel());
    private final JLabel key = new JLabel("Tab");

    CompletionRenderer() {
        super(new BorderLayout(12, 0));
        setBorder(BorderFactory.createEmptyBorder(0, 12, 0, 12));
        offered.setIconTextGap(6);
        add(offered, BorderLayout.LINE_START);
        add(explained, BorderLayout.CENTER);
        add(key, BorderLayout.LINE_END);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Completion> list,
            Completion completion,
            int index,
            boolean selected,
            boolean focused) {
        String id = completion.item().map(item -> item.id() + ": ").orElse("");
        offered.setText(completion.offered());
        offered.setIcon(completion.item().map(ItemIcon::new).orElse(null));
        explained.setText(id + completion.explanation());
        key.setVisible(selected);
        offered.setPreferredSize(null);
        int width = Math.max(OFFERED, offered.getPreferredSize().width);
        offered.setPreferredSize(new Dimension(width, HEIGHT));
        write(offered, Type.BODY, Palette.INK);
        write(explained, Type.SMALL, Palette.SOFT);
        write(key, Type.SMALL, Palette.SOFT);
        setBackground((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
        getAccessibleContext()
                .setAccessibleName(completion.offered() + ", " + completion.explanation());
        return this;
    }

    private static void write(JLabel label, Type type, Palette colour) {
        label.setFont(type.font());
        label.setForeground(colour.color());
    }
}
