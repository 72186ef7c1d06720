package counterstep.export.picture;

import java.util.Base64;

/** A photo as it goes out: pixels only, nothing that the camera wrote beside them. */
public final class EncodedPicture {
    private final PictureFormat format;
    private final byte[] bytes;
    private final int width;
    private final int height;

    EncodedPicture(PictureFormat format, byte[] bytes, int width, int height) {
        this.format = format;
        this.bytes = bytes.clone();
        this.width = width;
        this.height = height;
    }

    /** JPEG or PNG. */
    public PictureFormat format() {
        return format;
    }

    /** The file's content. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** In pixels. */
    public int width() {
        return width;
    }

    /** In pixels. */
    public int height() {
        return height;
    }

    /** The content as a data URI, for a file that holds everything in itself. */
    public String dataUri() {
        String encoded = Base64.getEncoder().encodeToString(bytes);
        return "data:" + format.mediaType() + ";base64," + encoded;
    }
}
