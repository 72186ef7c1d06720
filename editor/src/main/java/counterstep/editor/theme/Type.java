package counterstep.editor.theme;

import java.awt.Font;
import javax.swing.UIManager;

/** The few fonts of the window, all of one family; nothing is smaller than a label. */
public enum Type {
    /** 13, what is read. */
    BODY("body"),
    /** 13 semibold: titles of steps, words that act. */
    BODY_STRONG("bodyStrong"),
    /** 12, figures and second lines. */
    SMALL("small"),
    /** 12 semibold: numbers of steps. */
    SMALL_STRONG("smallStrong"),
    /** 11, labels above fields and columns. */
    LABEL("label"),
    /** 11 semibold: tags, column headings. */
    LABEL_STRONG("labelStrong"),
    /** 11 bold: the sign in a mark. */
    LABEL_BOLD("labelBold"),
    /** 15 bold: the head of a page. */
    HEAD("head"),
    /** 13 bold: the head of a panel. */
    PANEL_HEAD("panelHead");

    private final String key;

    Type(String role) {
        this.key = "Counterstep." + role + ".font";
    }

    /**
     * The font in the theme that is shown.
     *
     * @throws IllegalStateException if no {@link Theme} was shown before
     */
    public Font font() {
        Font font = UIManager.getFont(key);
        if (font == null) {
            throw new IllegalStateException("no theme is shown: " + key);
        }
        return font;
    }
}
