package counterstep.editor.findings;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** Draws a finding: mark, check, what is wrong, where, and what can be done. */
final class FindingRenderer extends JPanel implements ListCellRenderer<FindingRow> {
    private static final int INSET = 6;

    private final JLabel check = PlainText.in(new JLabel());
    private final JLabel message = PlainText.in(new JLabel());
    private final JLabel place = PlainText.in(new JLabel());
    private final JLabel fix = PlainText.in(new JLabel());
    private final JLabel waive = PlainText.in(new JLabel());
    private RowColumns columns = new RowColumns(0, 0, 0, 0);
    private FindingRow row;
    private RowPart under = RowPart.NONE;
    private boolean selected;
    private boolean focused;

    FindingRenderer() {
        super(null);
        add(check);
        add(message);
        add(place);
        add(fix);
        add(waive);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends FindingRow> list,
            FindingRow shown,
            int index,
            boolean isSelected,
            boolean isFocused) {
        row = shown;
        selected = isSelected;
        focused = isFocused && isSelected;
        if (list instanceof FindingList own) {
            columns = own.columns();
            under = own.under(index);
        }
        boolean open = shown.finding().open();
        Palette ink = open ? Palette.INK : Palette.SOFT;
        show(check, shown.check(), open ? Type.BODY_STRONG : Type.BODY, ink);
        show(message, shown.finding().message(), Type.BODY, ink);
        show(place, open ? shown.place() : "waived", Type.SMALL, Palette.SOFT);
        show(fix, shown.fixName(), Type.BODY_STRONG, Palette.ACCENT);
        show(waive, shown.waive(), Type.BODY, under == RowPart.WAIVE ? Palette.INK : Palette.SOFT);
        getAccessibleContext().setAccessibleName(spoken());
        return this;
    }

    private static void show(JLabel label, String text, Type type, Palette role) {
        label.setText(text);
        label.setFont(type.font());
        label.setForeground(role.color());
    }

    private String spoken() {
        String what =
                "%s, %s: %s"
                        .formatted(
                                row.finding().severity().word(),
                                row.check(),
                                row.finding().message());
        String done = row.fixName().isEmpty() ? "" : " Fix: " + row.fixName() + ".";
        return what + done + (row.finding().open() ? "" : " " + row.waiver());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(200, RowColumns.HEIGHT);
    }

    @Override
    public void doLayout() {
        int width = getWidth();
        check.setBounds(columns.check(width));
        message.setBounds(columns.message(width));
        place.setBounds(columns.place(width));
        fix.setBounds(columns.fix(width));
        waive.setBounds(columns.waive(width));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setColor(Palette.PANEL.color());
        own.fillRect(0, 0, getWidth(), getHeight());
        if (selected) {
            ground(own);
        }
        underline(own, fix, RowPart.FIX, Palette.ACCENT);
        underline(own, waive, RowPart.WAIVE, Palette.INK);
        if (!row.finding().open()) {
            own.setComposite(AlphaComposite.SrcOver.derive(0.55f));
        }
        SeverityMark.paint(
                own,
                row.finding().severity(),
                columns.mark().getCenterX(),
                columns.mark().getCenterY(),
                1);
        own.dispose();
    }

    private void ground(Graphics2D graphics) {
        RoundRectangle2D box =
                new RoundRectangle2D.Double(
                        INSET, 1, getWidth() - 2.0 * INSET, getHeight() - 2.0, 12, 12);
        graphics.setColor(Palette.ACCENT_GROUND.color());
        graphics.fill(box);
        if (focused) {
            graphics.setColor(Palette.ACCENT.color());
            graphics.setStroke(new BasicStroke(2));
            graphics.draw(box);
        }
    }

    private void underline(Graphics2D graphics, JLabel verb, RowPart part, Palette role) {
        if (under == part && !verb.getText().isEmpty()) {
            int width =
                    Math.min(
                            verb.getWidth(),
                            verb.getFontMetrics(verb.getFont()).stringWidth(verb.getText()));
            graphics.setColor(role.color());
            graphics.fillRect(verb.getX(), getHeight() / 2 + 9, width, 1);
        }
    }
}
