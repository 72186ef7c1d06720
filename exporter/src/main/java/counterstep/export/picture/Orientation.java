package counterstep.export.picture;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/**
 * How a camera was held, as it noted it in the file (Exif 2.32, tag 0x0112).
 *
 * @param mirrored whether left and right are to be exchanged, before it is turned
 * @param quarterTurns clockwise turns by 90 degrees that then make the photo stand upright, 0 to 3
 */
record Orientation(boolean mirrored, int quarterTurns) {
    /** Upright as it is, or nothing noted. */
    static final Orientation UPRIGHT = new Orientation(false, 0);

    /** What is noted in a photo; upright where nothing is, or nothing that can be read. */
    static Orientation of(byte[] bytes) {
        try {
            Metadata metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
            ExifIFD0Directory camera = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
            boolean noted = camera != null && camera.containsTag(ExifIFD0Directory.TAG_ORIENTATION);
            return noted ? ofTag(camera.getInt(ExifIFD0Directory.TAG_ORIENTATION)) : UPRIGHT;
        } catch (ImageProcessingException | MetadataException | IOException unreadable) {
            return UPRIGHT; // a photo that can be shown is not refused for what stands beside it
        }
    }

    /** The tag's values 1 to 8. */
    private static Orientation ofTag(int tag) {
        return switch (tag) {
            case 2 -> new Orientation(true, 0);
            case 3 -> new Orientation(false, 2);
            case 4 -> new Orientation(true, 2);
            case 5 -> new Orientation(true, 3);
            case 6 -> new Orientation(false, 1);
            case 7 -> new Orientation(true, 1);
            case 8 -> new Orientation(false, 3);
            default -> UPRIGHT;
        };
    }
}
