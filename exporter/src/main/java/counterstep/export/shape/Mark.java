package counterstep.export.shape;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A small drawing in one colour, the caller's. Marks of drives, connectors and other items lie
 * around the origin within 9 pixels each way at 100 %; edges of phases start at the origin.
 *
 * @param pieces its outlines, drawn in order
 */
public record Mark(List<Piece> pieces) {
    /** Half the side of the square that a mark of an item stays in, in pixels at 100 %. */
    public static final double REACH = 9;

    /** Copies the list. */
    public Mark {
        pieces = List.copyOf(pieces);
    }

    static Mark of(Piece... pieces) {
        return new Mark(List.of(pieces));
    }

    /** Draws it in the colour that is set, with its origin at a place and enlarged by a factor. */
    public void paint(Graphics2D graphics, double x, double y, double scale) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        AffineTransform placed = AffineTransform.getTranslateInstance(x, y);
        placed.scale(scale, scale);
        pieces.forEach(piece -> own.fill(placed.createTransformedShape(piece.inked())));
        own.dispose();
    }

    /** The rectangle that holds all of its ink. */
    public Rectangle2D bounds() {
        Rectangle2D bounds = pieces.get(0).inked().getBounds2D();
        pieces.forEach(piece -> bounds.add(piece.inked().getBounds2D()));
        return bounds;
    }
}
