package counterstep.editor.theme;

import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The window's type family as files, for what draws its own text. */
public enum FontFile {
    REGULAR(400, "Regular"),
    SEMIBOLD(600, "SemiBold"),
    BOLD(700, "Bold");

    private final int weight;
    private final String style;

    FontFile(int weight, String style) {
        this.weight = weight;
        this.style = style;
    }

    /** Its weight as style sheets count, 400 for regular. */
    public int weight() {
        return weight;
    }

    /** The file, in OpenType. */
    public byte[] bytes() {
        try (InputStream in =
                FlatInterFont.class.getResourceAsStream("Inter-%s.otf".formatted(style))) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
