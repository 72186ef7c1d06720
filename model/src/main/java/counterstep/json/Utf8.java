package counterstep.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Whether bytes are UTF-8, and in which line they are not. */
final class Utf8 {
    private static final int CHUNK = 8192;

    private Utf8() {}

    /** Where the text starts: behind a byte order mark, if there is one. */
    static int start(byte[] bytes) {
        boolean marked =
                bytes.length >= 3
                        && bytes[0] == (byte) 0xEF
                        && bytes[1] == (byte) 0xBB
                        && bytes[2] == (byte) 0xBF;
        return marked ? 3 : 0;
    }

    static void requireValid(byte[] bytes, int start) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(CHUNK);
        CoderResult result = decoder.decode(in, out, true);
        while (result.isOverflow()) {
            out.clear();
            result = decoder.decode(in, out, true);
        }
        if (result.isError()) {
            throw new Place(lineOf(bytes, in.position()), "")
                    .refused("not UTF-8 text", "save it in the encoding UTF-8");
        }
    }

    private static int lineOf(byte[] bytes, int position) {
        int line = 1;
        for (int at = 0; at < position; at++) {
            if (bytes[at] == '\n') {
                line++;
            }
        }
        return line;
    }
}
