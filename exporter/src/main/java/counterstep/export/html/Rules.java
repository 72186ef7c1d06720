package counterstep.export.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The rules of a style sheet, which lie in the jar beside the class that sets the page. */
public final class Rules {
    private Rules() {}

    /** The rules of that file beside a class; refuses a file that is not in the jar. */
    public static String beside(Class<?> setter, String name) {
        return new String(bytes(setter, name), StandardCharsets.UTF_8);
    }

    static byte[] bytes(Class<?> setter, String name) {
        try (InputStream in = setter.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: " + name);
            }
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
