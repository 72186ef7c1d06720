package counterstep.editor.canvas;

import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.SeverityMark;
import counterstep.editor.theme.Type;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A step from near: its actions as rows, photo and hazard, in pixels of its letters. */
final class NearFace {
    private static final double LEFT = 18;
    private static final double RIGHT = 10;
    private static final double TITLE_LINE = 20;
    private static final double BODY = 28;
    private static final double FOOT = 12;
    private static final double LINE = 16;

    private final TextFit fit;
    private final ActionRows rows;
    private final NearPhoto photo;

    /** The card in pixels of its letters. */
    private record Frame(double width, double height) {
        double right() {
            return width - RIGHT;
        }
    }

    NearFace(TextFit fit, Thumbnails photos) {
        this.fit = fit;
        this.rows = new ActionRows(fit);
        this.photo = new NearPhoto(photos);
    }

    void paint(Graphics2D graphics, StepFace face, double letter) {
        Frame frame = new Frame(Measures.WIDTH / letter, Measures.HEIGHT / letter);
        graphics.scale(letter, letter);
        PhaseEdges.paint(graphics, face.phase(), frame.height(), 1);
        head(graphics, face, frame);
        double time = minutes(graphics, face.minutes(), frame);
        double right = frame.right();
        if (face.near().photo().isPresent()) {
            Rectangle2D place = photoPlace(frame);
            photo.paint(graphics, face.near().photo().get(), place);
            right = place.getX() - 10;
        }
        double bottom = frame.height() - FOOT;
        if (face.near().notice().isPresent()) {
            double end = face.near().photo().isPresent() ? right : time - 10;
            bottom = notice(graphics, face.near().notice().get(), frame, end);
        }
        Rectangle2D body = new Rectangle2D.Double(LEFT, BODY, right - LEFT, bottom - BODY);
        rows.paint(graphics, face.near(), body);
        if (!face.tool().isEmpty()) {
            graphics.setFont(Type.LABEL_STRONG.font());
            double most = ToolTag.room(frame.width(), 1);
            ToolTag.paint(graphics, face.tool(), fit, LEFT, frame.height(), most, 1);
        }
    }

    private void head(Graphics2D graphics, StepFace face, Frame frame) {
        graphics.setFont(Type.SMALL_STRONG.font());
        graphics.setColor(Palette.FAINT.color());
        String number = "" + face.number();
        Figures.draw(graphics, number, LEFT, TITLE_LINE);
        double left = LEFT + 10 + Figures.width(graphics.getFontMetrics(), number);
        double room = frame.right() - left - (face.trouble().isPresent() ? 24 : 0);
        graphics.setFont(Type.BODY_STRONG.font());
        graphics.setColor(Palette.INK.color());
        String title = fit.within(face.title(), graphics.getFontMetrics(), room);
        graphics.drawString(title, (float) left, (float) TITLE_LINE);
        face.trouble()
                .ifPresent(
                        severity ->
                                SeverityMark.paint(
                                        graphics, severity, frame.right() - 8, TITLE_LINE - 4, 1));
    }

    private static double minutes(Graphics2D graphics, String minutes, Frame frame) {
        graphics.setFont(Type.SMALL.font());
        graphics.setColor(Palette.FAINT.color());
        Figures.drawRight(graphics, minutes, frame.right(), frame.height() - 9);
        return frame.right() - Figures.width(graphics.getFontMetrics(), minutes);
    }

    /** Below the title, above the time, and never so wide that the actions have no room. */
    private static Rectangle2D photoPlace(Frame frame) {
        double height = frame.height() - BODY - 26;
        double width = Math.min(height * 4 / 3, frame.width() * 0.34);
        return new Rectangle2D.Double(frame.right() - width, BODY + 1, width, height);
    }

    /** At the foot, in as many lines as there is room for; gives the height where it begins. */
    private double notice(Graphics2D graphics, Notice notice, Frame frame, double end) {
        int most = frame.height() < 110 ? 1 : frame.height() < 130 ? 2 : 3;
        graphics.setFont(Type.LABEL_BOLD.font());
        double beside = graphics.getFontMetrics().stringWidth(notice.signal()) + 8;
        graphics.setFont(Type.SMALL.font());
        List<String> lines =
                fit.lines(notice.words(), graphics.getFontMetrics(), end - LEFT - beside, most);
        double top = frame.height() - FOOT - Math.max(1, lines.size()) * LINE;
        double line = top + 12;
        graphics.setColor(Palette.SOFT.color());
        for (String text : lines) {
            graphics.drawString(text, (float) (LEFT + beside), (float) line);
            line += LINE;
        }
        graphics.setFont(Type.LABEL_BOLD.font());
        graphics.setColor(Palette.INK.color());
        graphics.drawString(notice.signal(), (float) LEFT, (float) (top + 12));
        return top - 2;
    }
}
