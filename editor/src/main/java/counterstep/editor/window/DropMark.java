package counterstep.editor.window;

import counterstep.editor.theme.Palette;
import java.awt.Graphics;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLayeredPane;

/** Outlines, above everything in the window, the ground that a dragged panel would take. */
final class DropMark extends JComponent {
    private final JLayeredPane layers;
    private Optional<Rectangle> ground = Optional.empty();

    DropMark(JFrame frame) {
        layers = frame.getLayeredPane();
        setSize(layers.getSize());
        layers.add(this, JLayeredPane.DRAG_LAYER);
    }

    void show(Optional<Drop> drop) {
        Point here = layers.getLocationOnScreen();
        ground = drop.map(Drop::ground);
        ground.ifPresent(each -> each.translate(-here.x, -here.y));
        repaint();
    }

    void remove() {
        layers.remove(this);
        layers.repaint();
    }

    @Override
    public boolean contains(int x, int y) {
        return false; // what lies below keeps the mouse
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Palette.ACCENT.color());
        ground.ifPresent(
                each -> {
                    graphics.drawRect(each.x, each.y, each.width - 1, each.height - 1);
                    graphics.drawRect(each.x + 1, each.y + 1, each.width - 3, each.height - 3);
                });
    }
}
