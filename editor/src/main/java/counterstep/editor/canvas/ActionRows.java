package counterstep.editor.canvas;

import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The actions of a near step: verb, mark, how many, item; then the text. */
final class ActionRows {
    private static final double PITCH = 18;
    private static final double MARK = 22;
    private static final double GAP = 8;
    private static final double FIRST = 13;

    private final TextFit fit;

    ActionRows(TextFit fit) {
        this.fit = fit;
    }

    void paint(Graphics2D graphics, Contents contents, Rectangle2D place) {
        int room = (int) Math.max(1, Math.floor(place.getHeight() / PITCH));
        List<ActionRow> rows = contents.rows();
        int shown = rows.size() <= room ? rows.size() : room - 1;
        columns(graphics, rows.subList(0, shown), place);
        double line = place.getY() + FIRST + shown * PITCH;
        if (shown < rows.size()) {
            graphics.setFont(Type.SMALL.font());
            graphics.setColor(Palette.FAINT.color());
            String more = "and " + (rows.size() - shown) + (shown == 0 ? " actions" : " more");
            graphics.drawString(more, (float) place.getX(), (float) line);
        } else if (shown < room) {
            text(graphics, contents.text(), place, line, room - shown);
        }
    }

    private void columns(Graphics2D graphics, List<ActionRow> rows, Rectangle2D place) {
        graphics.setFont(Type.SMALL_STRONG.font());
        FontMetrics strong = graphics.getFontMetrics();
        double verbs = widest(rows, row -> strong.stringWidth(row.verb()));
        double marks = widest(rows, row -> row.mark().isPresent() ? MARK : 0);
        double counts = widest(rows, row -> Figures.width(strong, row.count()));
        double mark = place.getX() + verbs + GAP;
        double count = mark + marks + counts;
        double words = counts == 0 ? count : count + GAP;
        double line = place.getY() + FIRST;
        for (ActionRow row : rows) {
            graphics.setFont(Type.SMALL_STRONG.font());
            graphics.setColor(Palette.FAINT.color());
            graphics.drawString(row.verb(), (float) place.getX(), (float) line);
            graphics.setColor(Palette.INK.color());
            Figures.drawRight(graphics, row.count(), count, line);
            if (row.mark().isPresent()) {
                row.mark().get().paint(graphics, mark + 8, line - 4, 0.9);
            }
            graphics.setFont(Type.SMALL.font());
            double room = place.getMaxX() - words;
            String text = fit.within(row.words(), graphics.getFontMetrics(), room);
            graphics.drawString(text, (float) words, (float) line);
            line += PITCH;
        }
    }

    private static double widest(List<ActionRow> rows, ToDoubleFunction<ActionRow> width) {
        return rows.stream().mapToDouble(width).max().orElse(0);
    }

    /** The instruction, where the actions leave room. */
    private void text(Graphics2D graphics, String text, Rectangle2D place, double first, int room) {
        graphics.setFont(Type.SMALL.font());
        graphics.setColor(Palette.SOFT.color());
        double line = first;
        for (String each : fit.lines(text, graphics.getFontMetrics(), place.getWidth(), room)) {
            graphics.drawString(each, (float) place.getX(), (float) line);
            line += PITCH;
        }
    }
}
