package counterstep.export.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** Turning, mirroring and scaling; what comes out has no transparency, on white. */
final class Pixels {
    private Pixels() {}

    /** Any image as pixels in memory; it must be loaded already, as what is copied always is. */
    static BufferedImage of(Image image) {
        BufferedImage pixels =
                blank(Math.max(1, image.getWidth(null)), Math.max(1, image.getHeight(null)));
        Graphics2D graphics = pixels.createGraphics();
        graphics.drawImage(image, 0, 0, null);
        graphics.dispose();
        return pixels;
    }

    /** Turned clockwise by so many quarters. */
    static BufferedImage turned(BufferedImage image, int quarters) {
        if (quarters % 4 == 0 && !image.getColorModel().hasAlpha()) {
            return image;
        }
        int width = image.getWidth();
        int height = image.getHeight();
        boolean upright = quarters % 2 == 0;
        BufferedImage turned = blank(upright ? width : height, upright ? height : width);
        AffineTransform turn = new AffineTransform();
        turn.translate(turned.getWidth() / 2.0, turned.getHeight() / 2.0);
        turn.quadrantRotate(quarters);
        turn.translate(-width / 2.0, -height / 2.0);
        Graphics2D graphics = turned.createGraphics();
        graphics.drawImage(image, turn, null);
        graphics.dispose();
        return turned;
    }

    /** Left and right exchanged. */
    static BufferedImage mirrored(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        BufferedImage mirrored = blank(width, height);
        Graphics2D graphics = mirrored.createGraphics();
        graphics.drawImage(image, width, 0, 0, height, 0, 0, width, height, null);
        graphics.dispose();
        return mirrored;
    }

    /** Scaled down so that the longer side is at most so many pixels; never scaled up. */
    static BufferedImage scaled(BufferedImage image, int longest) {
        int side = Math.max(image.getWidth(), image.getHeight());
        if (side <= longest) {
            return image;
        }
        if (side > 2 * longest) {
            // Halving in between keeps fine lines that one long jump would drop.
            return scaled(sized(image, (side + 1) / 2), longest);
        }
        return sized(image, longest);
    }

    private static BufferedImage sized(BufferedImage image, int longest) {
        double factor = (double) longest / Math.max(image.getWidth(), image.getHeight());
        int width = Math.max(1, (int) Math.round(image.getWidth() * factor));
        int height = Math.max(1, (int) Math.round(image.getHeight() * factor));
        BufferedImage sized = blank(width, height);
        Graphics2D graphics = sized.createGraphics();
        graphics.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(image, 0, 0, width, height, null);
        graphics.dispose();
        return sized;
    }

    private static BufferedImage blank(int width, int height) {
        BufferedImage blank = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = blank.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.dispose();
        return blank;
    }
}
