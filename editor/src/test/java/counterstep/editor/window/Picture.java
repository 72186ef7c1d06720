package counterstep.editor.window;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Robot;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.swing.SwingUtilities;

/** A component as it is painted on a screen of one, or of four, pixels a point. */
final class Picture {
    private static final int PATIENCE_MILLISECONDS = 300;
    private static final int MOST_TRIES = 60;

    private Picture() {}

    /** Waits until a component looks the same twice, and writes it at both densities. */
    static void write(Component component, Path folder, String name) throws Exception {
        settle(component);
        save(onEventThread(component, 1), folder.resolve(name + ".png"));
        save(onEventThread(component, 2), folder.resolve(name + "@2x.png"));
    }

    /** The same, at one density. */
    static void writeSmall(Component component, Path folder, String name) throws Exception {
        settle(component);
        save(onEventThread(component, 1), folder.resolve(name + ".png"));
    }

    private static void settle(Component component) throws Exception {
        Robot robot = new Robot();
        robot.mouseMove(1599, 999); // a pointer over the drawing would keep it where it is
        robot.waitForIdle();
        int[] before = new int[0];
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            int[] now = pixels(onEventThread(component, 1));
            if (Arrays.equals(before, now)) {
                return;
            }
            before = now;
            robot.delay(PATIENCE_MILLISECONDS);
        }
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static BufferedImage onEventThread(Component component, int scale)
            throws InterruptedException, InvocationTargetException {
        BufferedImage[] image = new BufferedImage[1];
        SwingUtilities.invokeAndWait(() -> image[0] = painted(component, scale));
        return image[0];
    }

    private static BufferedImage painted(Component component, int scale) {
        BufferedImage image =
                new BufferedImage(
                        component.getWidth() * scale,
                        component.getHeight() * scale,
                        BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.transform(AffineTransform.getScaleInstance(scale, scale));
        component.paint(graphics);
        graphics.dispose();
        return image;
    }

    private static void save(BufferedImage image, Path file) throws IOException {
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("png");
        ImageWriter writer = writers.next();
        ImageWriteParam smallest = writer.getDefaultWriteParam();
        smallest.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        smallest.setCompressionQuality(0);
        Files.deleteIfExists(file); // it would be written over, and keep its length
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), smallest);
        } finally {
            writer.dispose();
        }
    }
}
