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

    @ParameterizedTest
    @CsvSource({
        "1, 0, false",
        "2, 0, true",
        "3, 2, false",
        "4, 2, true",
        "5, 1, true",
        "6, 1, false",
        "7, 3, true",
        "8, 3, false",
        "0, 0, false",
        "9, 0, false"
    })
    void theCamerasNoteBecomesQuarterTurns(int note, int turns, boolean mirrored)
            throws IOException {
        Original original = Original.of("a", CameraNote.orientation(photo("jpg"), note));
        assertEquals(turns, original.quarterTurns());
        assertEquals(mirrored, original.mirrored());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void aPhotoTakenWithTheCameraTurnedComesOutUprightOnce(int note) throws IOException {
        int turns = Original.of("a", CameraNote.orientation(photo("jpg"), note)).quarterTurns();
        BufferedImage asTaken = Pixels.turned(scene(), 4 - turns);
        byte[] taken = CameraNote.orientation(encoded(asTaken, "jpg"), note);
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
        EncodedPicture exported = Pictures.in(folder).of(photo).encoded().orElseThrow();
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
