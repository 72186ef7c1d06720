package counterstep.export.picture;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The kinds of photo file that come in, told by how their content begins. */
enum FileKind {
    JPEG("jpg", "\u00FF\u00D8\u00FF"),
    PNG("png", "\u0089PNG\r\n\u001A\n"),
    GIF("gif", "GIF8");

    private final String extension;

    /** One character a byte. */
    private final String beginning;

    FileKind(String extension, String beginning) {
        this.extension = extension;
        this.beginning = beginning;
    }

    /** The kind of a file; its name is not asked, it may say anything. */
    static Optional<FileKind> of(byte[] bytes) {
        return Arrays.stream(values()).filter(kind -> kind.begins(bytes)).findFirst();
    }

    /** The end of a file name, without the dot. */
    String extension() {
        return extension;
    }

    private boolean begins(byte[] bytes) {
        int length = Math.min(bytes.length, beginning.length());
        return new String(bytes, 0, length, StandardCharsets.ISO_8859_1).equals(beginning);
    }
}
