package counterstep.editor.canvas;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The name on a rung. Above a level one, on a slanting one; where another name stands already it
 * moves along its rung, and where there is no room at all it is left out.
 *
 * @param rung the place of its rung among all
 * @param along how far along its rung it stands, 0 to 1
 * @param text the items
 * @param box what it takes up
 */
record RungLabel(int rung, double along, String text, Rectangle2D box) {
    private static final double[] ALONG = {0.5, 0.36, 0.64, 0.25, 0.75, 0.16, 0.84};

    /** Lays names out, those of level rungs first. */
    static List<RungLabel> of(List<RungLine> rungs, FontMetrics metrics, TextFit fit) {
        List<RungLabel> placed = new ArrayList<>();
        IntStream.range(0, rungs.size())
                .filter(place -> !rungs.get(place).label().isEmpty())
                .boxed()
                .sorted(Comparator.comparingDouble(place -> slant(rungs.get(place))))
                .forEach(
                        place ->
                                free(rungs.get(place), place, metrics, fit, placed)
                                        .ifPresent(placed::add));
        return List.copyOf(placed);
    }

    private static double slant(RungLine rung) {
        return Math.abs(rung.y1() - rung.y2());
    }

    private static Optional<RungLabel> free(
            RungLine rung, int place, FontMetrics metrics, TextFit fit, List<RungLabel> placed) {
        boolean level = rung.y1() == rung.y2();
        double room = level ? rung.x2() - rung.x1() - 8 : Measures.COLUMN_GAP * 0.7;
        String text = fit.within(rung.label(), metrics, room);
        double width = metrics.stringWidth(text) + 8;
        double height = metrics.getFont().getSize2D() + 5;
        for (double along : ALONG) {
            double middle = rung.x1() + along * (rung.x2() - rung.x1());
            double x = Math.max(rung.x1(), Math.min(rung.x2() - width, middle - width / 2));
            double y = rung.y1() + along * (rung.y2() - rung.y1());
            Rectangle2D box =
                    new Rectangle2D.Double(
                            x, level ? y - height - 2 : y - height / 2, width, height);
            if (placed.stream().noneMatch(other -> other.box().intersects(box))) {
                return Optional.of(new RungLabel(place, along, text, box));
            }
        }
        return Optional.empty();
    }

    /** It goes where its rung goes. */
    RungLabel onRungOf(List<RungLine> before, List<RungLine> now) {
        RungLine there = before.get(rung);
        RungLine here = now.get(rung);
        if (here.equals(there)) {
            return this;
        }
        double right = at(here.x1() - there.x1(), here.x2() - there.x2());
        double down = at(here.y1() - there.y1(), here.y2() - there.y2());
        Rectangle2D moved =
                new Rectangle2D.Double(
                        box.getX() + right, box.getY() + down, box.getWidth(), box.getHeight());
        return new RungLabel(rung, along, text, moved);
    }

    private double at(double first, double last) {
        return first + along * (last - first);
    }

    void paint(Graphics2D graphics, Lettering letters) {
        if (!graphics.hitClip(
                (int) box.getX(),
                (int) box.getY(),
                (int) box.getWidth() + 1,
                (int) box.getHeight() + 1)) {
            return;
        }
        graphics.setFont(letters.font(Type.LABEL));
        graphics.setColor(Palette.CANVAS.color());
        graphics.fill(
                new RoundRectangle2D.Double(
                        box.getX(), box.getY(), box.getWidth(), box.getHeight(), 8, 8));
        graphics.setColor(Palette.FAINT.color());
        double baseline = box.getY() + box.getHeight() * 0.75;
        graphics.drawString(text, (float) box.getX() + 4, (float) baseline);
    }
}
