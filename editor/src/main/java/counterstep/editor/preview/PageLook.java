package counterstep.editor.preview;

import counterstep.editor.theme.FontFile;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * What the preview adds to the look of the page: the type of the guide in a format that JavaFX
 * reads, since it does not take the one in the page.
 */
final class PageLook {
    private static final String FAMILY = "Counterstep Guide";

    private PageLook() {}

    /** The address of a style sheet that holds it all. */
    static String address() {
        StringBuilder sheet = new StringBuilder();
        for (FontFile font : FontFile.values()) {
            sheet.append(
                    "@font-face{font-family:'%s';font-weight:%d;src:url(data:font/otf;base64,%s)}\n"
                            .formatted(FAMILY, font.weight(), base64(font.bytes())));
        }
        sheet.append("body{font-family:'%s',sans-serif!important}\n".formatted(FAMILY));
        return "data:text/css;base64," + base64(sheet.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
