package counterstep.editor.preview;

import counterstep.editor.theme.FontFile;
import counterstep.editor.theme.Palette;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * What the preview adds to the look of the page: the type of the guide in a format that JavaFX
 * reads, since it does not take the one in the page; and scroll bars as all other panels have them.
 */
final class PageLook {
    private static final String FAMILY = "Counterstep Guide";

    /** Those inside of the page lie on its paper, which is white in every theme. */
    private static final String SCROLL_BARS =
            """
            ::-webkit-scrollbar{width:10px;height:10px}
            ::-webkit-scrollbar-button{display:none}
            ::-webkit-scrollbar-track,::-webkit-scrollbar-corner{background:#FFFFFF}
            ::-webkit-scrollbar-thumb
            {background:#8C887F;border:2px solid #FFFFFF;border-radius:5px;min-height:28px}
            body::-webkit-scrollbar-track,body::-webkit-scrollbar-corner{background:%1$s}
            body::-webkit-scrollbar-thumb{background:%2$s;border-color:%1$s}
            body::-webkit-scrollbar-thumb:hover{background:%3$s}
            """;

    private PageLook() {}

    /** The address of a style sheet that holds it all, in the colours of the theme now shown. */
    static String address() {
        StringBuilder sheet = new StringBuilder();
        for (FontFile font : FontFile.values()) {
            sheet.append(
                    "@font-face{font-family:'%s';font-weight:%d;src:url(data:font/otf;base64,%s)}\n"
                            .formatted(FAMILY, font.weight(), base64(font.bytes())));
        }
        sheet.append("body{font-family:'%s',sans-serif!important}\n".formatted(FAMILY));
        sheet.append(
                SCROLL_BARS.formatted(
                        hex(Palette.PANEL), hex(Palette.FIELD_OUTLINE), hex(Palette.SOFT)));
        return "data:text/css;base64," + base64(sheet.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String hex(Palette role) {
        return "#%06X".formatted(role.color().getRGB() & 0xFFFFFF);
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
