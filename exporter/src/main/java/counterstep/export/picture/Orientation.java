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
 * @param quarterTurns clockwise turns by 90 degrees that make the photo stand upright, 0 to 3
 * @param mirrored whether left and right are still exchanged after these turns
 */
record Orientation(int quarterTurns, boolean mirrored) {
    /** Upright as it is, or nothing noted. */
    static final Orientation UPRIGHT = new Orientation(0, false);

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

    /** The tag's values 1 to 8; the mirrored ones turned so that up is up. */
    private static Orientation ofTag(int tag) {
        return switch (tag) {
            case 2 -> new Orientation(0, true);
            case 3 -> new Orientation(2, false);
            case 4 -> new Orientation(2, true);
            case 5 -> new Orientation(1, true);
            case 6 -> new Orientation(1, false);
            case 7 -> new Orientation(3, true);
            case 8 -> new Orientation(3, false);
            default -> UPRIGHT;
        };
    }
}
