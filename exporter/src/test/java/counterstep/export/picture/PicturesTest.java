package counterstep.export.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.store.PhotoFolder;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PicturesTest {
    private static final String SECRET = "51 deg 30 min north, camera 4711";

    @TempDir private Path folder;

    @Test
    void whatTheCameraWroteIsGoneAndThePixelsStay() throws IOException {
        byte[] taken = withCameraData(encoded(new BufferedImage(60, 40, 1), "jpg"));
        assertTrue(holdsSecret(taken));
        EncodedPicture picture = shown(write("a.jpg", taken), 0);
        assertFalse(holdsSecret(picture.bytes()));
        assertEquals(60, picture.width());
        assertEquals(PictureFormat.JPEG, picture.format());
    }

    @Test
    void aLargePhotoIsScaledToTwelveHundredPixels() throws IOException {
        byte[] large = encoded(new BufferedImage(5000, 3000, BufferedImage.TYPE_BYTE_GRAY), "png");
        EncodedPicture picture = shown(write("a.png", large), 0);
        assertEquals(1200, picture.width());
        assertEquals(720, picture.height());
    }

    @Test
    void quarterTurnsAreClockwise() throws IOException {
        BufferedImage image = new BufferedImage(40, 20, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, 0xFF0000);
        EncodedPicture turned = shown(write("a.png", encoded(image, "png")), 1);
        BufferedImage result = ImageIO.read(new ByteArrayInputStream(turned.bytes()));
        assertEquals(20, result.getWidth());
        assertEquals(0xFFFF0000, result.getRGB(19, 0));
    }

    @Test
    void aMissingABrokenAndATooLargePhotoSayWhatIsWrong() throws IOException {
        assertEquals("photo missing", trouble("gone.png"));
        assertEquals("photo cannot be read", trouble(write("b.png", new byte[] {1, 2, 3})));
        byte[] cut = Arrays.copyOf(encoded(new BufferedImage(60, 40, 1), "png"), 60);
        assertEquals("photo cannot be read", trouble(write("c.png", cut)));
        assertEquals(
                "photo has more than 100 million pixels",
                trouble(write("d.png", claiming(20_000, 20_000))));
    }

    @Test
    void calloutsAreDrawnIntoThePixels() throws IOException {
        EncodedPicture plain =
                shown(write("a.png", encoded(new BufferedImage(200, 100, 1), "png")), 0);
        Callout callout =
                new Callout(
                        3, CalloutShape.ARROW, 0.2, 0.5, 0.8, 0.5, Optional.empty(), Extras.NONE);
        EncodedPicture numbered = NumberedPicture.of(plain, List.of(callout));
        BufferedImage before = ImageIO.read(new ByteArrayInputStream(plain.bytes()));
        BufferedImage after = ImageIO.read(new ByteArrayInputStream(numbered.bytes()));
        assertNotEquals(before.getRGB(40, 41), after.getRGB(40, 41));
        assertEquals(before.getRGB(195, 5), after.getRGB(195, 5));
    }

    private EncodedPicture shown(String file, int turns) {
        return picture(file, turns).encoded().orElseThrow();
    }

    private String trouble(String file) {
        return picture(file, 0).trouble();
    }

    private Picture picture(String file, int turns) {
        PhotoFolder photos = PhotoFolder.beside(folder.resolve("x.procedure.json"));
        return Pictures.in(photos, 1200)
                .of(new Photo(new PhotoId("h1"), file, "", "", turns, Extras.NONE));
    }

    private String write(String name, byte[] bytes) throws IOException {
        Path photos = Files.createDirectories(folder.resolve("x.photos"));
        Files.write(photos.resolve(name), bytes);
        return name;
    }

    private static byte[] encoded(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, format, out));
        return out.toByteArray();
    }

    /** The JPEG with a segment after its first marker, where cameras put place and serial. */
    private static byte[] withCameraData(byte[] jpeg) {
        byte[] words = ("Exif\0\0" + SECRET).getBytes(StandardCharsets.US_ASCII);
        ByteBuffer all = ByteBuffer.allocate(jpeg.length + words.length + 4);
        all.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (words.length + 2));
        all.put(words).put(jpeg, 2, jpeg.length - 2);
        return all.array();
    }

    private static boolean holdsSecret(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(SECRET);
    }

    /** A PNG of a few bytes that says it is as large as that. */
    private static byte[] claiming(int width, int height) throws IOException {
        byte[] small = encoded(new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY), "png");
        ByteBuffer buffer = ByteBuffer.wrap(small);
        buffer.putInt(16, width).putInt(20, height);
        CRC32 check = new CRC32();
        check.update(small, 12, 17);
        buffer.putInt(29, (int) check.getValue());
        return small;
    }
}
