package counterstep.editor.desk;

import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Photos made on the spot: grey, 80 by 60 pixels, with a corner of one colour. */
public final class TestPhoto {
    private TestPhoto() {}

    /** Pixels with such a corner, upper left. */
    public static BufferedImage pixels(Color corner) {
        BufferedImage image = new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.LIGHT_GRAY);
        graphics.fillRect(0, 0, 80, 60);
        graphics.setColor(corner);
        graphics.fillRect(0, 0, 20, 15);
        graphics.dispose();
        return image;
    }

    /** A file of them, "png" or "jpg". */
    public static byte[] file(Color corner, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(pixels(corner), format, out)) {
                throw new IllegalArgumentException(format);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /** A photo of that file. */
    public static Photo of(String id, String file, int quarterTurns) {
        return new Photo(new PhotoId(id), file, "", "", quarterTurns, Extras.NONE);
    }
}
