package counterstep.editor.theme;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The sign of the program: two columns of steps, rungs between them. */
public final class WindowIcon {
    private WindowIcon() {}

    /** The icon in the sizes that window systems ask for. */
    public static List<Image> images() {
        return IntStream.of(16, 24, 32, 48, 64, 128).<Image>mapToObj(WindowIcon::image).toList();
    }

    private static BufferedImage image(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.scale(size / 32.0, size / 32.0);
        graphics.setColor(Palette.ACCENT.color());
        graphics.fill(new RoundRectangle2D.Double(0, 0, 32, 32, 12, 12));
        graphics.setColor(Palette.ON_ACCENT.color());
        graphics.setStroke(new BasicStroke(1.6f));
        for (int row = 0; row < 3; row++) {
            double y = 6 + 7.5 * row;
            graphics.fill(new RoundRectangle2D.Double(5, y, 8, 5, 2, 2));
            graphics.fill(new RoundRectangle2D.Double(19, y, 8, 5, 2, 2));
            graphics.draw(new Line2D.Double(14.5, y + 2.5, 17.5, y + 2.5));
        }
        graphics.dispose();
        return image;
    }
}
