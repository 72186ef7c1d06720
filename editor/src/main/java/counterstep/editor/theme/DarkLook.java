package counterstep.editor.theme;

import com.formdev.flatlaf.FlatDarkLaf;

/** The dark look; FlatLaf reads its colours from {@code DarkLook.properties} beside it. */
public final class DarkLook extends FlatDarkLaf {
    @Override
    public String getName() {
        return "Counterstep dark";
    }

    @Override
    public String getDescription() {
        return "Counterstep, light on dark";
    }
}
