package counterstep.export.html;

import counterstep.export.picture.EncodedPicture;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;

/** Gives photos addresses, so that the PDF maker need not read megabytes of text; the same once. */
final class PaperPhotos {
    private final Map<ByteBuffer, String> addresses = new HashMap<>();

    String address(EncodedPicture picture) {
        String fresh = "photo:" + (addresses.size() + 1);
        return addresses.computeIfAbsent(ByteBuffer.wrap(picture.bytes()), bytes -> fresh);
    }

    /** What lies under each address. */
    Map<String, byte[]> all() {
        Map<String, byte[]> all = new HashMap<>();
        addresses.forEach((bytes, address) -> all.put(address, bytes.array()));
        return all;
    }
}
