package counterstep.export.picture;

import counterstep.input.BadInput;
import counterstep.input.Limits;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A photo as it comes in: its bytes as they are, known to be a photo that can be shown. */
public final class Original {
    private static final int DIGITS = 16;
    private static final int PROBED = 256;

    private final byte[] bytes;
    private final String fileName;
    private final Orientation orientation;

    private Original(byte[] bytes, String fileName, Orientation orientation) {
        this.bytes = bytes;
        this.fileName = fileName;
        this.orientation = orientation;
    }

    /**
     * Examines what claims to be a photo; slow for large ones.
     *
     * @param name what the writer knows it by, for the refusal
     * @param bytes all of it
     * @throws BadInput if it is no JPEG, PNG or GIF by its content, broken, or too large
     */
    public static Original of(String name, byte[] bytes) {
        if (bytes.length > Limits.PHOTO_BYTES) {
            throw tooLarge(name);
        }
        FileKind kind =
                FileKind.of(bytes)
                        .orElseThrow(
                                () ->
                                        new BadInput(
                                                name,
                                                "neither a JPEG nor a PNG nor a GIF photo",
                                                "save it as one of these first"));
        try {
            RawPicture.read(bytes, PROBED);
        } catch (IOException refused) {
            BadInput told = new BadInput(name, String.valueOf(refused.getMessage()), "");
            told.initCause(refused);
            throw told;
        }
        String fileName = hash(bytes) + "." + kind.extension();
        return new Original(bytes.clone(), fileName, Orientation.of(bytes));
    }

    /** Refuses a file for its length alone, before it is read. */
    public static BadInput tooLarge(String name) {
        return new BadInput(
                name,
                "more than " + (Limits.PHOTO_BYTES >> 20) + " MiB",
                "save it in a smaller size first");
    }

    /** What was copied as pixels, from a screen say, as a PNG file. */
    public static Original of(Image pixels) {
        BufferedImage image = Pixels.of(pixels);
        try {
            byte[] bytes = PictureEncoder.bytes(image, PictureFormat.PNG);
            return of("The copied photo", bytes);
        } catch (IOException impossible) {
            // These bytes never leave the memory.
            throw new UncheckedIOException(impossible);
        }
    }

    /** The file's content, untouched. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** A plain name made of the content: equal photos have the same. */
    public String fileName() {
        return fileName;
    }

    /**
     * Clockwise turns by 90 degrees that make it stand upright, as the camera noted. A camera that
     * looks into a mirror notes that too; such a photo is shown with left and right exchanged.
     */
    public int quarterTurns() {
        return orientation.quarterTurns();
    }

    private static String hash(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException impossible) {
            // Every Java platform is required to have SHA-256.
            throw new IllegalStateException(impossible);
        }
    }
}
