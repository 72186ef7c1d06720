package counterstep.editor.start;

import counterstep.editor.theme.Palette;
import counterstep.mirror.Cell;
import counterstep.mirror.Column;
import counterstep.mirror.EmptyPlace;
import counterstep.mirror.MirrorLayout;
import counterstep.mirror.Rung;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import javax.swing.JComponent;

/** A procedure seen from afar: its two columns, the rungs, and the places that stay empty. */
final class SampleDrawing extends JComponent {
    private static final Dimension SIZE = new Dimension(150, 154);
    private static final double LEFT = 28;
    private static final double RIGHT = 92;
    private static final double STEP = 30;
    private static final double GAP = 5;
    private static final double TALLEST_ROW = 14;
    private static final double MARGIN = 14;

    /** Below this height there is no room between two outlines. */
    private static final double SMALL = 4;

    private static final Stroke DOTTED = dashed(1, 1, 3);
    private static final Stroke DASHED = dashed(1.2f, 3, 2);

    private Optional<MirrorLayout> layout = Optional.empty();

    SampleDrawing() {
        setPreferredSize(SIZE);
        setMinimumSize(SIZE);
    }

    private static Stroke dashed(float width, float on, float off) {
        return new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {on, off}, 0);
    }

    /** Draws this from now on. */
    void show(MirrorLayout mirror) {
        layout = Optional.of(mirror);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setColor(Palette.CANVAS.color());
        own.fill(new RoundRectangle2D.Double(0, 0, getWidth() + 12.0, getHeight(), 10, 10));
        own.setColor(Palette.LINE.color());
        own.draw(new Line2D.Double(getWidth() - 0.5, 0, getWidth() - 0.5, getHeight()));
        layout.ifPresent(mirror -> paint(own, mirror));
        own.dispose();
    }

    private void paint(Graphics2D graphics, MirrorLayout mirror) {
        double row = Math.min(TALLEST_ROW, (getHeight() - 2 * MARGIN) / Math.max(1, mirror.rows()));
        graphics.translate(0, (getHeight() - row * mirror.rows()) / 2);
        double height = row * 0.65;
        for (Rung rung : mirror.rungs()) {
            double from = mirror.cells().get(rung.left()).row();
            double to = mirror.cells().get(rung.right()).row();
            rung(graphics, from * row + height / 2, to * row + height / 2, Palette.RUNG.color());
        }
        for (Cell cell : mirror.cells().values()) {
            double x = cell.column() == Column.LEFT ? LEFT : RIGHT;
            box(graphics, x, cell.row() * row, height, true);
        }
        for (EmptyPlace place : mirror.emptyPlaces()) {
            double from = mirror.cells().get(place.left()).row() * row + height / 2;
            rung(graphics, from, place.row() * row + height / 2, Palette.ERROR.color());
            box(graphics, RIGHT, place.row() * row, height, false);
        }
    }

    private static void rung(Graphics2D graphics, double from, double to, Color color) {
        graphics.setColor(color);
        graphics.setStroke(DOTTED);
        graphics.draw(new Line2D.Double(LEFT + STEP + GAP, from, RIGHT - GAP, to));
    }

    private static void box(Graphics2D graphics, double x, double y, double height, boolean there) {
        boolean small = height < SMALL;
        double shown = there || !small ? height : SMALL;
        RoundRectangle2D box = new RoundRectangle2D.Double(x, y, STEP, shown, 3, 3);
        if (there) {
            graphics.setColor((small ? Palette.OUTLINE : Palette.TAG).color());
            graphics.fill(box);
        }
        if (!there || !small) {
            graphics.setColor((there ? Palette.OUTLINE : Palette.ERROR).color());
            graphics.setStroke(there ? new BasicStroke(1) : DASHED);
            graphics.draw(box);
        }
    }
}
