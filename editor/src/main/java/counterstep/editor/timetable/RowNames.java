package counterstep.editor.timetable;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import javax.swing.JComponent;

/** The names of the rows; they stay while the bars move. */
final class RowNames extends JComponent {
    private static final int WIDTH = 140;
    private static final int LEFT = 16;

    private List<Row> rows = List.of();

    void show(List<Row> next, int height) {
        rows = next;
        setPreferredSize(new Dimension(WIDTH, height));
        revalidate();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        ((Graphics2D) graphics)
                .setRenderingHint(
                        RenderingHints.KEY_TEXT_ANTIALIASING,
                        RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setColor(Palette.PANEL.color());
        graphics.fillRect(0, 0, getWidth(), getHeight());
        graphics.setFont(Type.SMALL.font());
        if (!rows.isEmpty()) {
            graphics.setColor(Palette.SOFT.color());
            graphics.drawString("minutes", LEFT, Shown.AXIS - 8);
        }
        for (Row row : rows) {
            graphics.setColor((row.aside() ? Palette.SOFT : Palette.INK).color());
            graphics.drawString(
                    row.name(), LEFT, row.top() + (row.height() == Row.HANDS ? 19 : 16));
        }
    }
}
