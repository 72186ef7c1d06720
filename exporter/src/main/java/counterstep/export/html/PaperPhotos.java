package counterstep.export.html;

import counterstep.export.picture.EncodedPicture;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;

/** Gives photos addresses, so that the PDF maker need not read megabytes of text; the same once. */
final class PaperPhotos {
    private final Map<ByteBuffer, String> addresses = new HashMap<>();
    private final Map<String, byte[]> photos = new HashMap<>();

    String address(EncodedPicture picture) {
        byte[] bytes = picture.bytes();
        String fresh = "photo:" + (addresses.size() + 1);
        String address = addresses.computeIfAbsent(ByteBuffer.wrap(bytes), same -> fresh);
        photos.putIfAbsent(address, bytes);
        return address;
    }

    /** What lies under each address. */
    Map<String, byte[]> all() {
        return photos;
    }
}
