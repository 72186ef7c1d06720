package counterstep.testing;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** Writes into a JPEG file how the camera was held, as a camera does (Exif 2.32, tag 0x0112). */
public final class CameraNote {
    private static final int MARKER = 0xFFE1;
    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;

    private CameraNote() {}

    /** The same photo with the note, 1 to 8, right after its first marker. */
    public static byte[] orientation(byte[] jpeg, int value) {
        ByteBuffer note = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4);
        note.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        note.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8);
        note.putShort((short) 1); // one entry
        note.putShort((short) ORIENTATION).putShort((short) SHORT).putInt(1);
        note.putShort((short) value).putShort((short) 0);
        note.putInt(0); // no further directory
        ByteBuffer all = ByteBuffer.allocate(jpeg.length + note.capacity() + 4);
        all.put(jpeg, 0, 2).putShort((short) MARKER).putShort((short) (note.capacity() + 2));
        all.put(note.array()).put(jpeg, 2, jpeg.length - 2);
        return all.array();
    }
}
