package counterstep.export.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * A photo as read from its file, coarser already where the file has far more pixels than needed.
 * Where the camera noted that it shows things as in a mirror, left and right are exchanged.
 *
 * @param pixels what it shows
 * @param format how it should go out again
 */
record RawPicture(BufferedImage pixels, PictureFormat format) {
    private static final long MOST_PIXELS = 100_000_000;
    private static final String BROKEN = "photo cannot be read";

    /**
     * Reads a photo; its size is looked at before any pixel is.
     *
     * @param wanted the longer side that will be needed, in pixels
     * @throws IOException with a message for the reader of the guide, if it is broken or too large
     */
    static RawPicture read(byte[] bytes, int wanted) throws IOException {
        try (ImageInputStream in =
                new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException(BROKEN);
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                RawPicture read = read(reader, wanted);
                return Orientation.of(bytes).mirrored() ? read.mirrored() : read;
            } finally {
                reader.dispose();
            }
        }
    }

    private RawPicture mirrored() {
        return new RawPicture(Pixels.mirrored(pixels), format);
    }

    private static RawPicture read(ImageReader reader, int wanted) throws IOException {
        BufferedImage pixels;
        boolean jpeg = reader.getFormatName().toLowerCase(Locale.ROOT).startsWith("jp");
        try {
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if ((long) width * height > MOST_PIXELS) {
                throw new TooLarge();
            }
            ImageReadParam sparing = reader.getDefaultReadParam();
            // Half as much again as needed is kept at least, so that scaling can still smooth.
            int every = Math.max(1, 2 * Math.max(width, height) / (3 * wanted));
            sparing.setSourceSubsampling(every, every, 0, 0);
            pixels = reader.read(0, sparing);
        } catch (TooLarge told) {
            throw told;
        } catch (IOException | RuntimeException broken) {
            // Decoders throw unchecked exceptions of many kinds on broken files.
            throw new IOException(BROKEN, broken);
        }
        return new RawPicture(pixels, jpeg ? PictureFormat.JPEG : PictureFormat.PNG);
    }

    /** Tells a photo that is refused for its size from one that is broken. */
    private static final class TooLarge extends IOException {
        TooLarge() {
            super("photo has more than 100 million pixels");
        }
    }
}
