package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;

/**
 * The whole drawing, small, with a frame around what is seen; a click or drag there moves it. Not
 * there while the whole is seen.
 */
final class Overview extends JPanel {
    private static final double INSET = 7;
    private static final double WIDTH = 48;
    private static final double MOST_HEIGHT = 150;

    private final StepCells cells;
    private final Viewpoint viewpoint;

    Overview(StepCells cells, Viewpoint viewpoint) {
        this.cells = cells;
        this.viewpoint = viewpoint;
        setOpaque(false);
        setName("overview");
        getAccessibleContext().setAccessibleName("Overview of the steps");
        MouseAdapter mover = new Mover();
        addMouseListener(mover);
        addMouseMotionListener(mover);
        viewpoint.onChange(this::follow);
    }

    private void follow() {
        setVisible(!cells.scene().isEmpty() && !viewpoint.seesAll());
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        Rectangle2D bounds = cells.scene().bounds();
        return new Dimension(
                (int) (WIDTH + 2 * INSET),
                (int) (Math.max(24, bounds.getHeight() * down()) + 2 * INSET));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        GraphPane.smooth(own);
        own.setColor(Palette.PANEL.color());
        RoundRectangle2D ground =
                new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, 8, 8);
        own.fill(ground);
        own.setColor(Palette.LINE.color());
        own.draw(ground);
        own.setColor(Palette.OUTLINE.color());
        for (Card card : cells.seen().cards().values()) {
            own.fill(shrunk(card.box(), 1.5));
        }
        own.setColor(Palette.ACCENT.color());
        own.setStroke(new BasicStroke(1.5f));
        Rectangle2D frame = shrunk(viewpoint.seen(), 4);
        Rectangle2D inside =
                frame.createIntersection(
                        new Rectangle2D.Double(2, 2, getWidth() - 4, getHeight() - 4));
        own.draw(
                new RoundRectangle2D.Double(
                        inside.getX(), inside.getY(), inside.getWidth(), inside.getHeight(), 4, 4));
        own.dispose();
    }

    private Rectangle2D shrunk(Rectangle2D scene, double least) {
        Rectangle2D bounds = cells.scene().bounds();
        return new Rectangle2D.Double(
                INSET + (scene.getX() - bounds.getX()) * across(),
                INSET + (scene.getY() - bounds.getY()) * down(),
                Math.max(least, scene.getWidth() * across()),
                Math.max(least, scene.getHeight() * down()));
    }

    private double across() {
        return WIDTH / cells.scene().bounds().getWidth();
    }

    private double down() {
        Rectangle2D bounds = cells.scene().bounds();
        return Math.min(across() * 1.4, MOST_HEIGHT / bounds.getHeight());
    }

    private final class Mover extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            move(event);
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            move(event);
        }

        private void move(MouseEvent event) {
            Rectangle2D bounds = cells.scene().bounds();
            viewpoint.centreOn(
                    new Point2D.Double(
                            bounds.getX() + (event.getX() - INSET) / across(),
                            bounds.getY() + (event.getY() - INSET) / down()));
        }
    }
}
