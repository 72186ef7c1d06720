package counterstep.editor.theme;

import java.awt.Toolkit;

/**
 * Whether the desktop asks programs for less motion. Read where a desktop tells it by XSETTINGS
 * ({@code Gtk/EnableAnimations}, 0 for none); elsewhere the Java platform does not tell it, and
 * motion is taken to be welcome.
 */
public final class DesktopMotion {
    private DesktopMotion() {}

    /** Whether less motion is asked for now. */
    public static boolean isReduced(Toolkit toolkit) {
        return isReduced(toolkit.getDesktopProperty("gnome.Gtk/EnableAnimations"));
    }

    /** What the value of the setting means; the platform has none where it is not told. */
    static boolean isReduced(Object value) {
        return value instanceof Number number && number.intValue() == 0;
    }
}
