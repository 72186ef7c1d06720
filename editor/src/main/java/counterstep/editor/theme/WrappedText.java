package counterstep.editor.theme;

import javax.swing.JTextArea;
import javax.swing.border.Border;
import javax.swing.plaf.UIResource;
import javax.swing.text.DefaultCaret;

/** Words that wrap within the width they are given, to be read and not to be changed. */
public final class WrappedText extends JTextArea {
    private final Type type;
    private Palette role;

    /** Words in a colour and a font. */
    public WrappedText(Palette role, Type type) {
        this.role = role;
        this.type = type;
        setLineWrap(true);
        setWrapStyleWord(true);
        setEditable(false);
        setFocusable(false);
        updateUI();
    }

    /** Shows the words in another colour, in every theme. */
    public void role(Palette other) {
        role = other;
        setForeground(other.color());
    }

    @Override
    public void updateUI() {
        Border given = getBorder();
        super.updateUI();
        if (role != null) { // asked for once by the constructor above this one
            setOpaque(false);
            setBorder(given instanceof UIResource ? null : given);
            setMargin(null);
            setForeground(role.color());
            setFont(type.font());
            if (getCaret() instanceof DefaultCaret caret) {
                caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE); // new words scroll nothing
            }
        }
    }

    /** How high the words are when they are that wide. */
    public int heightAt(int width) {
        setSize(Math.max(1, width), Short.MAX_VALUE);
        return getPreferredSize().height;
    }
}
