package counterstep.export.tray;

import counterstep.export.shape.ScrewSide;
import counterstep.export.shape.SvgMark;
import counterstep.model.Numbers;
import java.util.Locale;

/** Drawings whose millimetres are those of the paper: 96 CSS pixels are 25.4 mm (CSS Values 3). */
final class TrueSize {
    private static final double PIXELS = 96 / 25.4;

    /** Between screws, and around them, in mm. */
    private static final double GAP = 5;

    private static final double EDGE = 0.5;
    private static final int LINES = 2;
    private static final int CHECK = 100;
    private static final int TICKS = 10;

    private static final String END = "</g></svg>";

    private TrueSize() {}

    /** Whether a screw can be drawn on a paper that leaves so many mm. */
    static boolean fits(ScrewSide screw, double width) {
        return screw.width() + 2 * EDGE <= width;
    }

    /** As many of the screws as find place in a cell of that width in mm, two lines at most. */
    static String screws(ScrewSide screw, int count, double width) {
        double pitch = screw.width() + GAP;
        int across = Math.max(1, (int) ((width - 2 * EDGE + GAP) / pitch));
        int drawn = Math.min(count, across * LINES);
        int lines = (drawn + across - 1) / across;
        double high = screw.height() + 3;
        StringBuilder svg = new StringBuilder(open(width, lines * high));
        for (int each = 0; each < drawn; each++) {
            int line = each / across;
            double x = EDGE + each % across * pitch;
            double y = high / 2 + line * high;
            svg.append("<g transform=\"translate(").append(place(x)).append(' ');
            svg.append(place(y)).append(")\">").append(outline(screw)).append("</g>");
        }
        return svg.append(END).toString();
    }

    private static String outline(ScrewSide screw) {
        String shapes = SvgMark.data(screw.head()) + SvgMark.data(screw.shank());
        return "<path d=\""
                + shapes
                + "\" fill=\"#FFFFFF\" stroke=\"#111315\" stroke-width=\"0.2\"/><path d=\""
                + SvgMark.data(screw.thread())
                + "\" fill=\"none\" stroke=\"#111315\" stroke-width=\"0.12\"/>";
    }

    /** A line of 100 mm between the outer edges of its end marks, with a tick every 10 mm. */
    static String checkLine() {
        StringBuilder marks = new StringBuilder("M0 3H" + CHECK);
        for (int tick = 1; tick < TICKS; tick++) {
            marks.append("M").append(tick * TICKS).append(" 2.3V3.7");
        }
        return open(CHECK, 6)
                + "<path fill=\"none\" stroke=\"#111315\" stroke-width=\"0.3\" d=\""
                + marks
                + "\"/><path fill=\"none\" stroke=\"#111315\" stroke-width=\"0.3\""
                + " d=\"M0.15 1V5M99.85 1V5\"/>"
                + END;
    }

    /** The frame of a photo with a letter where each set goes; so many mm wide. */
    static String map(HoleMap map, double width) {
        double height = width * map.shape();
        StringBuilder svg = new StringBuilder(open(width, height));
        svg.append("<rect x=\"0.3\" y=\"0.3\" rx=\"3\" fill=\"none\" stroke=\"#111315\"");
        svg.append(" stroke-width=\"0.4\" width=\"").append(place(width - 0.6));
        svg.append("\" height=\"").append(place(height - 0.6)).append("\"/>");
        map.places().forEach(each -> svg.append(letter(each, width, height)));
        return svg.append(END).toString();
    }

    private static String letter(HoleMap.Place place, double width, double height) {
        double x = Math.min(Math.max(place.x() * width, 3), width - 3);
        double y = Math.min(Math.max(place.y() * height, 3), height - 3);
        return "<circle r=\"2.2\" fill=\"#FFFFFF\" stroke=\"#111315\" stroke-width=\"0.25\" cx=\""
                + place(x)
                + "\" cy=\""
                + place(y)
                + "\"/><text font-family=\"Inter\" font-weight=\"700\" font-size=\"2.7\""
                + " text-anchor=\"middle\" x=\""
                + place(x)
                + "\" y=\""
                + place(y + 0.95)
                + "\">"
                + place.letter()
                + "</text>";
    }

    /** Whole pixels outside, since the PDF maker reads no others; millimetres inside. */
    private static String open(double width, double height) {
        return String.format(
                Locale.ROOT,
                "<svg class=\"true-size\" width=\"%1$d\" height=\"%2$d\" viewBox=\"0 0 %1$d %2$d\""
                        + " aria-hidden=\"true\"><g transform=\"scale(%3$.6f)\">",
                (int) Math.ceil(width * PIXELS),
                (int) Math.ceil(height * PIXELS),
                PIXELS);
    }

    private static String place(double millimetres) {
        return Numbers.plain(millimetres);
    }
}
