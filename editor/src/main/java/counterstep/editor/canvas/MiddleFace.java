package counterstep.editor.canvas;

import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.List;

/** A step from the middle: its title, what it touches and how many, its time and its tool. */
final class MiddleFace {
    static final double TEXT_LEFT = 18;
    private static final double TITLE_LEFT = 42;
    private static final double RIGHT = Measures.WIDTH - 10;
    private static final double TITLE_LINE = 21;
    private static final double MARK_LINE = 52;

    private final TextFit fit;

    MiddleFace(TextFit fit) {
        this.fit = fit;
    }

    void paint(Graphics2D graphics, StepFace face, Lettering letters) {
        double growth = letters.growth();
        PhaseEdges.paint(graphics, face.phase(), Measures.HEIGHT, 1);
        head(graphics, face, letters);
        double minutes = minutes(graphics, face.minutes(), letters);
        marks(graphics, face.marks(), minutes - 8, letters);
        face.trouble()
                .ifPresent(
                        severity ->
                                SeverityMark.paint(
                                        graphics,
                                        severity,
                                        RIGHT + 2 - 8 * growth,
                                        TITLE_LINE - 4,
                                        growth));
        if (!face.tool().isEmpty()) {
            tag(graphics, face.tool(), letters);
        }
    }

    private void head(Graphics2D graphics, StepFace face, Lettering letters) {
        graphics.setFont(letters.font(Type.SMALL_STRONG));
        graphics.setColor(Palette.FAINT.color());
        String number = "" + face.number();
        Figures.draw(graphics, number, TEXT_LEFT, TITLE_LINE);
        double left =
                Math.max(
                        TITLE_LEFT,
                        TEXT_LEFT + 8 + Figures.width(graphics.getFontMetrics(), number));
        double right = face.trouble().isPresent() ? RIGHT - 4 - 16 * letters.growth() : RIGHT;
        graphics.setFont(letters.font(Type.BODY_STRONG));
        graphics.setColor(Palette.INK.color());
        String title = fit.within(face.title(), graphics.getFontMetrics(), right - left);
        graphics.drawString(title, (float) left, (float) TITLE_LINE);
    }

    private static double minutes(Graphics2D graphics, String minutes, Lettering letters) {
        graphics.setFont(letters.font(Type.SMALL));
        graphics.setColor(Palette.FAINT.color());
        Figures.drawRight(graphics, minutes, RIGHT, MARK_LINE);
        return RIGHT - Figures.width(graphics.getFontMetrics(), minutes);
    }

    private static void marks(
            Graphics2D graphics, List<StepMark> marks, double right, Lettering letters) {
        graphics.setFont(letters.font(Type.SMALL));
        FontMetrics metrics = graphics.getFontMetrics();
        double growth = Math.sqrt(letters.growth());
        double text = 21 * growth;
        double x = TEXT_LEFT;
        for (int place = 0; place < marks.size(); place++) {
            StepMark mark = marks.get(place);
            String more = "+" + (marks.size() - place);
            double width = text + metrics.stringWidth(mark.text());
            boolean last = place == marks.size() - 1;
            if (x + width + (last ? 0 : 14 + metrics.stringWidth(more)) > right && place > 0) {
                graphics.setColor(Palette.SOFT.color());
                graphics.drawString(more, (float) x, (float) MARK_LINE);
                return;
            }
            graphics.setColor(Palette.INK.color());
            mark.mark().paint(graphics, x + 8 * growth, MARK_LINE - 4 * growth, growth);
            graphics.setColor(Palette.SOFT.color());
            graphics.drawString(mark.text(), (float) (x + text), (float) MARK_LINE);
            x += width + (mark.text().isEmpty() ? 6 : 14);
        }
    }

    private void tag(Graphics2D graphics, String tool, Lettering letters) {
        graphics.setFont(letters.font(Type.LABEL_STRONG));
        double most = ToolTag.room(Measures.WIDTH, letters.growth());
        ToolTag.paint(graphics, tool, fit, TEXT_LEFT, Measures.HEIGHT, most, letters.growth());
    }
}
