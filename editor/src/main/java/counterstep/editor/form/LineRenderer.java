package counterstep.editor.form;

import counterstep.editor.form.ListInput.Line;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import java.awt.BorderLayout;
import java.awt.Component;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Draws an entry as a word set off, a mark, and what follows. */
final class LineRenderer<T> extends JPanel implements ListCellRenderer<T> {
    private final Function<T, Line> line;
    private final JLabel lead = PlainText.in(new JLabel());
    private final JLabel rest = PlainText.in(new JLabel());

    LineRenderer(Function<T, Line> line) {
        super(new BorderLayout(8, 0));
        this.line = line;
        setBorder(BorderFactory.createEmptyBorder(4, 8, 4, 8));
        rest.setIconTextGap(6);
        add(lead, BorderLayout.LINE_START);
        add(rest, BorderLayout.CENTER);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends T> list, T value, int index, boolean selected, boolean focused) {
        Line shown = line.apply(value);
        lead.setText(shown.lead());
        lead.setFont(Type.BODY_STRONG.font());
        rest.setText(shown.rest().isEmpty() ? " " : shown.rest());
        rest.setIcon(shown.mark().orElse(null));
        rest.setFont(Type.BODY.font());
        lead.setForeground(Palette.INK.color());
        rest.setForeground(Palette.INK.color());
        setBackground((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
        getAccessibleContext().setAccessibleName(shown.lead() + " " + shown.rest());
        return this;
    }
}
