package counterstep.export.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes pixels into a fresh file, so that nothing of the old one but its pixels remains. */
final class PictureEncoder {
    private static final float QUALITY = 0.85f;
    private static final int LARGE = 1_500_000;

    private PictureEncoder() {}

    /** Encodes; a drawing that comes out large is taken for a photo after all. */
    static EncodedPicture encode(BufferedImage image, PictureFormat format) throws IOException {
        byte[] bytes = bytes(image, format);
        if (format == PictureFormat.PNG && bytes.length > LARGE) {
            return encode(image, PictureFormat.JPEG);
        }
        return new EncodedPicture(format, bytes, image.getWidth(), image.getHeight());
    }

    /** The content of a file with these pixels alone. */
    static byte[] bytes(BufferedImage image, PictureFormat format) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format.extension()).next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam param = writer.getDefaultWriteParam();
            if (format == PictureFormat.JPEG) {
                param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                param.setCompressionQuality(QUALITY);
            }
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
