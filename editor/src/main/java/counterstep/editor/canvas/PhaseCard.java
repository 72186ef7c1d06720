package counterstep.editor.canvas;

import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import counterstep.model.Severity;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is read on a folded phase, at the three distances: its numbers and its trouble; its name,
 * how many steps, how long, what is found; the titles, as many as have room.
 */
final class PhaseCard {
    private static final double LEFT = 18;
    private static final double RIGHT = 10;
    private static final double TITLE_LINE = 21;
    private static final double COUNT_LINE = 52;
    private static final double LINE = 16;
    private static final double TITLES = 40;
    private static final double FOOT = 8;
    private static final double NUMBERS = 28;

    private final TextFit fit;

    PhaseCard(TextFit fit) {
        this.fit = fit;
    }

    void paint(Graphics2D graphics, PhaseFace face, double zoom) {
        Lettering letters = new Lettering(zoom);
        switch (Detail.at(zoom)) {
            case FAR -> far(graphics, face, zoom);
            case MIDDLE -> middle(graphics, face, letters);
            case NEAR -> near(graphics, face, letters.growth());
        }
    }

    /** Two edges below the card: there is more than one step here. */
    static void leaves(Graphics2D graphics, double line) {
        graphics.setColor(Palette.FIELD_OUTLINE.color());
        graphics.setStroke(new BasicStroke((float) line));
        for (int leaf = 1; leaf <= 2; leaf++) {
            double inset = 5 * leaf;
            double y = Measures.HEIGHT + 3 * leaf;
            Path2D edge = new Path2D.Double();
            edge.moveTo(inset, y - 3);
            edge.quadTo(inset, y, inset + 3, y);
            edge.lineTo(Measures.WIDTH - inset - 3, y);
            edge.quadTo(Measures.WIDTH - inset, y, Measures.WIDTH - inset, y - 3);
            graphics.draw(edge);
        }
    }

    private void far(Graphics2D graphics, PhaseFace face, double zoom) {
        double reach = face.trouble().isPresent() ? FarFace.markWidth(zoom) + RIGHT : 0;
        double room = Measures.WIDTH - FarFace.LEFT - reach;
        FarFace.head(graphics, face.phase(), zoom);
        FontMetrics metrics = graphics.getFontMetrics();
        String range = face.range();
        String numbers = metrics.stringWidth(range) <= room ? range : face.numbers().get(0) + "…";
        graphics.drawString(numbers, (float) FarFace.LEFT, (float) FarFace.baseline(zoom));
        face.trouble().ifPresent(worst -> FarFace.trouble(graphics, worst, 0, 0, zoom));
    }

    private void middle(Graphics2D graphics, PhaseFace face, Lettering letters) {
        PhaseEdges.paint(graphics, face.phase(), Measures.HEIGHT, 1);
        double right = found(graphics, face, Measures.WIDTH - RIGHT, letters.growth(), letters);
        name(graphics, face, right, letters.font(Type.BODY_STRONG));
        graphics.setFont(letters.font(Type.SMALL));
        foot(graphics, face, Measures.WIDTH - RIGHT, COUNT_LINE);
    }

    private void near(Graphics2D graphics, PhaseFace face, double letter) {
        double width = Measures.WIDTH / letter;
        double height = Measures.HEIGHT / letter;
        graphics.scale(letter, letter);
        PhaseEdges.paint(graphics, face.phase(), height, 1);
        double right = found(graphics, face, width - RIGHT, 1, new Lettering(1));
        name(graphics, face, right, Type.BODY_STRONG.font());
        graphics.setFont(Type.SMALL.font());
        foot(graphics, face, width - RIGHT, height - 9);
        titles(graphics, face, width, height - 9 - LINE);
    }

    private void name(Graphics2D graphics, PhaseFace face, double right, Font font) {
        graphics.setFont(font);
        graphics.setColor(Palette.INK.color());
        String name = fit.within(face.name(), graphics.getFontMetrics(), right - LEFT - 8);
        graphics.drawString(name, (float) LEFT, (float) TITLE_LINE);
    }

    private void foot(Graphics2D graphics, PhaseFace face, double right, double line) {
        graphics.setColor(Palette.SOFT.color());
        Figures.draw(graphics, face.count(), LEFT, line);
        graphics.setColor(Palette.FAINT.color());
        Figures.drawRight(graphics, face.minutes(), right, line);
    }

    /** Marks with their counts, the worst leftmost; gives where they begin. */
    private static double found(
            Graphics2D graphics, PhaseFace face, double right, double scale, Lettering letters) {
        graphics.setFont(letters.font(Type.SMALL));
        List<Map.Entry<Severity, Integer>> found = new ArrayList<>(face.found().entrySet());
        double x = right;
        for (int place = found.size() - 1; place >= 0; place--) {
            String times = found.get(place).getValue().toString();
            graphics.setColor(Palette.SOFT.color());
            Figures.drawRight(graphics, times, x, TITLE_LINE);
            x -= Figures.width(graphics.getFontMetrics(), times) + 4 + 8 * scale;
            SeverityMark.paint(graphics, found.get(place).getKey(), x, TITLE_LINE - 4, 0.8 * scale);
            x -= 8 * scale + 6;
        }
        return x;
    }

    private void titles(Graphics2D graphics, PhaseFace face, double width, double bottom) {
        FontMetrics metrics = graphics.getFontMetrics();
        double line = TITLES;
        for (int place = 0; place < face.titles().size() && line <= bottom - FOOT / 2; place++) {
            graphics.setColor(Palette.FAINT.color());
            Figures.draw(graphics, "" + face.numbers().get(place), LEFT, line);
            graphics.setColor(Palette.INK.color());
            double room = width - RIGHT - LEFT - NUMBERS;
            String title = fit.within(face.titles().get(place), metrics, room);
            graphics.drawString(title, (float) (LEFT + NUMBERS), (float) line);
            line += LINE;
        }
    }
}
