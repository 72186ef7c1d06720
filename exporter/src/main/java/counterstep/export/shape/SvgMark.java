package counterstep.export.shape;

import counterstep.model.Numbers;
import java.awt.Shape;
import java.awt.geom.PathIterator;

/** A mark as SVG for paper: outlines only, in the colour of the text around it. */
public final class SvgMark {
    private static final String[] COMMANDS = {"M", "L", "Q", "C", "Z"};
    private static final int[] COORDINATES = {2, 2, 4, 6, 0};

    private SvgMark() {}

    /**
     * An inline SVG element for a mark of an item; hidden from reading aids, since words beside it
     * say the same.
     *
     * @param side its width and height in CSS pixels
     */
    public static String element(Mark mark, double side) {
        String reach = Numbers.plain(Mark.REACH);
        String whole = Numbers.plain(2 * Mark.REACH);
        String size = Numbers.plain(side);
        StringBuilder svg = new StringBuilder();
        svg.append("<svg class=\"mark\" width=\"").append(size);
        svg.append("\" height=\"").append(size);
        svg.append("\" viewBox=\"-").append(reach).append(" -").append(reach);
        svg.append(' ').append(whole).append(' ').append(whole);
        svg.append("\" aria-hidden=\"true\">");
        mark.pieces().forEach(piece -> svg.append(path(piece)));
        return svg.append("</svg>").toString();
    }

    private static String path(Piece piece) {
        String paint =
                piece.isFilled()
                        ? "fill=\"currentColor\""
                        : "fill=\"none\" stroke=\"currentColor\" stroke-linejoin=\"round\""
                                + " stroke-width=\""
                                + Numbers.plain(piece.lineWidth())
                                + "\"";
        return "<path " + paint + " d=\"" + data(piece.outline()) + "\"/>";
    }

    /** The path data of an outline, coordinates to two places. */
    public static String data(Shape outline) {
        StringBuilder data = new StringBuilder();
        double[] points = new double[6];
        for (PathIterator at = outline.getPathIterator(null); !at.isDone(); at.next()) {
            int segment = at.currentSegment(points);
            data.append(COMMANDS[segment]);
            for (int point = 0; point < COORDINATES[segment]; point++) {
                data.append(point == 0 ? "" : " ");
                data.append(Numbers.plain(Math.rint(points[point] * 100) / 100));
            }
        }
        return data.toString();
    }
}
