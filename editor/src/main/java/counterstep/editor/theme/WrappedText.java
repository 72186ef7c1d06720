package counterstep.editor.theme;

import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Words that wrap within the width they are given, to be read and not to be changed. */
public final class WrappedText extends JTextArea {
    private final Palette role;
    private final Type type;

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

    @Override
    public void updateUI() {
        super.updateUI();
        if (role != null) { // asked for once by the constructor above this one
            setOpaque(false);
            setBorder(null);
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
