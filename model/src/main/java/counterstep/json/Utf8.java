package counterstep.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Bytes as UTF-8 text: how long it is, or in which line it is none. */
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

    /** How many characters the bytes say; refuses bytes that say none. */
    static long length(byte[] bytes, int start) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(CHUNK);
        long length = 0;
        CoderResult result = CoderResult.OVERFLOW;
        while (result.isOverflow()) {
            result = decoder.decode(in, out.clear(), true);
            length += out.position();
        }
        if (result.isError()) {
            throw new Place(lineOf(bytes, in.position()), "")
                    .refused("not UTF-8 text", "save it in the encoding UTF-8");
        }
        return length;
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
