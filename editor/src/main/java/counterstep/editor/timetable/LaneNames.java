package counterstep.editor.timetable;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Map;
import javax.swing.JComponent;

/** The names of the rows; they stay while the bars move. */
final class LaneNames extends JComponent {
    private static final int WIDTH = 140;
    private static final int LEFT = 16;

    private Map<Lane, Integer> tops = Map.of();

    void show(Map<Lane, Integer> next, int height) {
        tops = next;
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
        graphics.setColor(Palette.INK.color());
        tops.forEach(
                (lane, top) ->
                        graphics.drawString(
                                lane.word(), LEFT, top + (lane == Lane.HANDS ? 19 : 16)));
    }
}
