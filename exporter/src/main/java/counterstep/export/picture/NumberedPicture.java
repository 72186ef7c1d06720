package counterstep.export.picture;

import counterstep.model.Callout;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** A photo with its callouts drawn into the pixels, for formats that cannot lay them over it. */
public final class NumberedPicture {
    private NumberedPicture() {}

    /** The same photo with the callouts in it; itself where there are none. */
    public static EncodedPicture of(EncodedPicture plain, List<Callout> callouts) {
        if (callouts.isEmpty()) {
            return plain;
        }
        try {
            int longest = Math.max(plain.width(), plain.height());
            BufferedImage image =
                    Pixels.turned(RawPicture.read(plain.bytes(), longest).pixels(), 0);
            Graphics2D graphics = image.createGraphics();
            graphics.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            callouts.forEach(
                    callout -> draw(graphics, callout, image.getWidth(), image.getHeight()));
            graphics.dispose();
            return PictureEncoder.encode(image, plain.format());
        } catch (IOException impossible) {
            // We wrote these bytes ourselves, and they stay in memory.
            throw new UncheckedIOException(impossible);
        }
    }

    /** Draws a callout over a photo of that size whose upper left corner is the origin. */
    public static void draw(Graphics2D graphics, Callout callout, double width, double height) {
        CalloutFigure figure = CalloutFigure.of(callout, width, height);
        graphics.setColor(Color.WHITE);
        graphics.fill(CalloutFigure.rim(figure.leader(), figure.radius()));
        graphics.fill(CalloutFigure.rim(figure.disc(), figure.radius()));
        graphics.setColor(Color.BLACK);
        graphics.fill(figure.leader());
        graphics.fill(figure.disc());
        graphics.setColor(Color.WHITE);
        graphics.fill(number(graphics, callout.number(), figure));
    }

    private static Shape number(Graphics2D graphics, int number, CalloutFigure figure) {
        Font font =
                new Font(Font.SANS_SERIF, Font.BOLD, 1).deriveFont((float) figure.radius() * 1.3f);
        var glyphs =
                font.createGlyphVector(graphics.getFontRenderContext(), Integer.toString(number));
        var bounds = glyphs.getVisualBounds();
        return glyphs.getOutline(
                (float) (figure.disc().getCenterX() - bounds.getCenterX()),
                (float) (figure.disc().getCenterY() - bounds.getCenterY()));
    }
}
