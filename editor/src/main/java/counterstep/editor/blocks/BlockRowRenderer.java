package counterstep.editor.blocks;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Name left, what it holds right. */
final class BlockRowRenderer implements ListCellRenderer<BlockRow> {
    private final JPanel line = new JPanel(new BorderLayout(16, 0));
    private final JLabel name = PlainText.in(new JLabel());
    private final JLabel contents = PlainText.in(new JLabel());

    BlockRowRenderer() {
        line.setBorder(BorderFactory.createEmptyBorder(0, 16, 0, 12));
        line.add(name, BorderLayout.CENTER);
        line.add(contents, BorderLayout.LINE_END);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends BlockRow> list,
            BlockRow row,
            int index,
            boolean selected,
            boolean focused) {
        line.setBackground((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
        name.setText(row.title());
        name.setFont((row.own() ? Type.BODY_STRONG : Type.BODY).font());
        name.setForeground(Palette.INK.color());
        contents.setText(row.contents());
        contents.setFont(Type.SMALL.font());
        contents.setForeground(Palette.SOFT.color());
        line.getAccessibleContext().setAccessibleName(row.toString());
        return line;
    }
}
