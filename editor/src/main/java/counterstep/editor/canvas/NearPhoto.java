package counterstep.editor.canvas;

import counterstep.editor.theme.Figures;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;

/** The photo of a near step, its numbers on it; an empty frame where it is not there. */
final class NearPhoto {
    private static final double DOT = 8;

    /** On a photo less high the numbers would hide it and one another. */
    private static final double NUMBERED = 56;

    private final Thumbnails photos;

    NearPhoto(Thumbnails photos) {
        this.photos = photos;
    }

    void paint(Graphics2D graphics, PhotoFace photo, Rectangle2D place) {
        Optional<Image> image = photos.of(photo, (int) place.getWidth(), (int) place.getHeight());
        graphics.setColor(Palette.TAG.color());
        graphics.fill(
                new RoundRectangle2D.Double(
                        place.getX(), place.getY(), place.getWidth(), place.getHeight(), 6, 6));
        Rectangle2D inside = image.map(each -> fitted(each, place)).orElse(place);
        image.ifPresent(
                each ->
                        graphics.drawImage(
                                each,
                                (int) Math.round(inside.getX()),
                                (int) Math.round(inside.getY()),
                                (int) Math.round(inside.getWidth()),
                                (int) Math.round(inside.getHeight()),
                                null));
        if (inside.getHeight() >= NUMBERED) {
            photo.spots().forEach(spot -> dot(graphics, spot, inside));
        }
    }

    private static Rectangle2D fitted(Image image, Rectangle2D place) {
        double width = image.getWidth(null);
        double height = image.getHeight(null);
        double scale = Math.min(place.getWidth() / width, place.getHeight() / height);
        return new Rectangle2D.Double(
                place.getCenterX() - width * scale / 2,
                place.getCenterY() - height * scale / 2,
                width * scale,
                height * scale);
    }

    private static void dot(Graphics2D graphics, PhotoFace.Spot spot, Rectangle2D on) {
        double x = inside(on.getX() + spot.x() * on.getWidth(), on.getMinX(), on.getMaxX());
        double y = inside(on.getY() + spot.y() * on.getHeight(), on.getMinY(), on.getMaxY());
        graphics.setColor(Palette.INK.color());
        graphics.fill(new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
        graphics.setFont(Type.LABEL_BOLD.font());
        graphics.setColor(Palette.CARD.color());
        String number = "" + spot.number();
        double width = Figures.width(graphics.getFontMetrics(), number);
        Figures.draw(graphics, number, x - width / 2, y + 4);
    }

    private static double inside(double at, double least, double most) {
        return Math.max(least + DOT, Math.min(most - DOT, at));
    }
}
