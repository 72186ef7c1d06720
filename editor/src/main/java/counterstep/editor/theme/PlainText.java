package counterstep.editor.theme;

import javax.swing.JComponent;

/**
 * Keeps Swing from taking text of a document for markup: a label whose text begins with the tag of
 * a page would lay it out, and fetch what it names.
 */
public final class PlainText {
    private PlainText() {}

    /** The same component, showing its text to the letter. */
    public static <C extends JComponent> C in(C component) {
        component.putClientProperty("html.disable", true);
        return component;
    }
}
