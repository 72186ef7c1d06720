package counterstep.editor.theme;

import com.formdev.flatlaf.FlatLightLaf;

/** The light look; FlatLaf reads its colours from {@code LightLook.properties} beside it. */
public final class LightLook extends FlatLightLaf {
    @Override
    public String getName() {
        return "Counterstep light";
    }

    @Override
    public String getDescription() {
        return "Counterstep, dark on light";
    }
}
