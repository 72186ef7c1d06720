package counterstep.export.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import counterstep.input.Limits;
import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.store.PhotoFolder;
import counterstep.testing.CameraNote;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class OriginalTest {
    private static final int LONG = 320;
    private static final int SHORT = 240;

    private static byte[] photo(String format) throws IOException {
        return encoded(scene(), format);
    }

    /** Upright: wider than high, and red in its upper left corner. */
    private static BufferedImage scene() {
        BufferedImage scene = new BufferedImage(LONG, SHORT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = scene.createGraphics();
        graphics.setColor(Color.GRAY);
        graphics.fillRect(0, 0, LONG, SHORT);
        graphics.setColor(Color.RED);
        graphics.fillRect(0, 0, LONG / 4, SHORT / 4);
        graphics.dispose();
        return scene;
    }

    private static byte[] encoded(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, format, out));
        return out.toByteArray();
    }

    private static String refusal(byte[] bytes) {
        return assertThrows(BadInput.class, () -> Original.of("lid.jpg", bytes)).getMessage();
    }

    @ParameterizedTest
    @CsvSource({"jpg, jpg", "png, png", "gif, gif"})
    void isNamedByItsContentAndStaysAsItIs(String format, String ending) throws Exception {
        byte[] bytes = photo(format);
        Original original = Original.of("anything.txt", bytes);
        String digest =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        assertEquals(digest.substring(0, 16) + "." + ending, original.fileName());
        assertArrayEquals(bytes, original.bytes());
    }

    @Test
    void anotherContentHasAnotherName() throws IOException {
        assertNotEquals(
                Original.of("a", photo("jpg")).fileName(),
                Original.of("a", CameraNote.orientation(photo("jpg"), 1)).fileName());
    }

    @Test
    void whatIsNoPhotoIsRefusedInASentence() throws IOException {
        String none = "lid.jpg: neither a JPEG nor a PNG nor a GIF photo; save it as one of these";
        assertEquals(none + " first", refusal("<svg/>".getBytes(StandardCharsets.US_ASCII)));
        assertEquals(none + " first", refusal(new byte[0]));
        assertEquals(none + " first", refusal(encoded(scene(), "bmp")));
        byte[] cut = Arrays.copyOf(photo("png"), 40);
        assertEquals("lid.jpg: photo cannot be read", refusal(cut));
    }

    @Test
    void aFileThatIsTooLargeIsRefusedBeforeItIsRead() {
        assertEquals(
                "lid.jpg: more than 64 MiB; save it in a smaller size first",
                refusal(new byte[Limits.PHOTO_BYTES + 1]));
    }

    @Test
    void pixelsBecomeAPngOfThese() throws IOException {
        Original original = Original.of(scene());
        BufferedImage back = ImageIO.read(new ByteArrayInputStream(original.bytes()));
        assertTrue(original.fileName().endsWith(".png"), original.fileName());
        assertEquals(LONG, back.getWidth());
        assertEquals(Color.RED.getRGB(), back.getRGB(2, 2));
    }

    /** What a camera stores: where the first row and the first column of the scene lie (Exif). */
    private static BufferedImage stored(int note) {
        BufferedImage scene = scene();
        boolean crosswise = note >= 5 && note <= 8;
        BufferedImage stored =
                new BufferedImage(
                        crosswise ? SHORT : LONG,
                        crosswise ? LONG : SHORT,
                        BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < SHORT; y++) {
            for (int x = 0; x < LONG; x++) {
                int right = LONG - 1 - x;
                int below = SHORT - 1 - y;
                int[] at =
                        switch (note) {
                            case 2 -> new int[] {right, y};
                            case 3 -> new int[] {right, below};
                            case 4 -> new int[] {x, below};
                            case 5 -> new int[] {y, x};
                            case 6 -> new int[] {y, right};
                            case 7 -> new int[] {below, right};
                            case 8 -> new int[] {below, x};
                            default -> new int[] {x, y};
                        };
                stored.setRGB(at[0], at[1], scene.getRGB(x, y));
            }
        }
        return stored;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    void howeverTheCameraWasHeldItComesOutUprightOnce(int note) throws IOException {
        byte[] taken = CameraNote.orientation(encoded(stored(note), "jpg"), note);
        Original original = Original.of("a", taken);
        Photo photo =
                new Photo(
                        new PhotoId("p1"),
                        original.fileName(),
                        "",
                        "",
                        original.quarterTurns(),
                        Extras.NONE);
        PhotoFolder folder = PhotoFolder.of(name -> Optional.of(taken));
        EncodedPicture exported = Pictures.in(folder, 1200).of(photo).encoded().orElseThrow();
        requireUpright(ImageIO.read(new ByteArrayInputStream(exported.bytes())));
        requireUpright(ScaledPhoto.of(photo, folder, LONG).pixels().orElseThrow());
        assertEquals(
                0,
                Original.of("b", exported.bytes()).quarterTurns(),
                "nobody who reads the export turns it again");
    }

    private static void requireUpright(BufferedImage shown) {
        assertEquals(LONG, shown.getWidth());
        assertEquals(SHORT, shown.getHeight());
        Color corner = new Color(shown.getRGB(20, 20));
        Color across = new Color(shown.getRGB(LONG - 20, SHORT - 20));
        assertTrue(corner.getRed() > 200 && corner.getGreen() < 60, "red corner: " + corner);
        assertTrue(Math.abs(across.getRed() - across.getGreen()) < 20, "grey: " + across);
    }
}
