package counterstep.editor.theme;

import java.awt.Color;
import javax.swing.UIManager;

/**
 * Colours by what they are for. Each is looked up in the theme at the moment of painting, so that a
 * change of theme needs no word to anybody.
 */
public enum Palette {
    /** Ground of the step graph. */
    CANVAS("canvas"),
    /** Ground of panels, bars and fields. */
    PANEL("panel"),
    /** Ground of the status line and of rows that stand out a little. */
    SIDE("side"),
    /** Ground of a step. */
    CARD("card"),
    /** Thin lines between panels. */
    LINE("line"),
    /** Outline of a step and of a tool's tag. */
    OUTLINE("outline"),
    /** Outline of a field to type into. */
    FIELD_OUTLINE("fieldOutline"),
    /** Text to read. */
    INK("ink"),
    /** Text of second rank, phase edges. */
    SOFT("soft"),
    /** Text of third rank, links. */
    FAINT("faint"),
    /** The one accent: focus, selection, words that act. */
    ACCENT("accent"),
    /** Ground of what is selected in a list. */
    ACCENT_GROUND("accentGround"),
    /** Text on the accent. */
    ON_ACCENT("onAccent"),
    /** Severity error. */
    ERROR("error"),
    /** Ground of a row with an error. */
    ERROR_GROUND("errorGround"),
    /** Severity doubt. */
    DOUBT("doubt"),
    /** Severity hint. */
    HINT("hint"),
    /** The sign inside a severity mark. */
    ON_MARK("onMark"),
    /** Critical path. */
    CRITICAL("critical"),
    /** Ground of a tool's tag. */
    TAG("tag"),
    /** Rungs between a step and its counterstep. */
    RUNG("rung");

    private final String key;

    Palette(String role) {
        this.key = "Counterstep." + role;
    }

    /** Its key in the theme. */
    public String key() {
        return key;
    }

    /**
     * The colour in the theme that is shown.
     *
     * @throws IllegalStateException if no {@link Theme} was shown before
     */
    public Color color() {
        Color color = UIManager.getColor(key);
        if (color == null) {
            throw new IllegalStateException("no theme is shown: " + key);
        }
        return color;
    }
}
