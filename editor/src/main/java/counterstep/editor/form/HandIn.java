package counterstep.editor.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.text.JTextComponent;

/**
 * When typed text counts as a change: when the field is left, after a pause, on Enter in a single
 * line, or when somebody about to save asks for it. So an undo takes back what a person would call
 * one change.
 */
public final class HandIn {
    private static final int PAUSE_MILLISECONDS = 900;
    private static final String KEY = "counterstep.handIn";

    private final Runnable changed;
    private final Timer pause;
    private boolean typed;
    private boolean muted;

    private HandIn(Runnable changed) {
        this.changed = changed;
        this.pause = new Timer(PAUSE_MILLISECONDS, event -> handIn());
        pause.setRepeats(false);
    }

    /** Hands in the text of the field that has the focus, if it is one of ours. */
    public static void focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner instanceof JComponent field
                && field.getClientProperty(KEY) instanceof HandIn own) {
            own.handIn();
        }
    }

    /**
     * Watches a field from now on.
     *
     * @param changed makes an edit of what was typed
     */
    public static HandIn attach(JTextComponent field, Runnable changed) {
        HandIn handIn = new HandIn(changed);
        field.putClientProperty(KEY, handIn);
        field.getDocument().addDocumentListener(new Typing(handIn::type));
        field.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        handIn.handIn();
                    }
                });
        if (field instanceof JTextField) {
            field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), KEY);
            field.getActionMap().put(KEY, handIn.enter(field));
        }
        return handIn;
    }

    /**
     * Shows text without counting it as typed; text being typed is left alone if it says the same.
     */
    void show(JTextComponent field, String text) {
        boolean same = field.getText().equals(text);
        if (same || (field.isFocusOwner() && typed)) {
            return;
        }
        muted = true;
        field.setText(text);
        field.setCaretPosition(0);
        muted = false;
        typed = false;
    }

    /** Changes the text without counting it as typed. */
    public void quietly(Runnable change) {
        boolean before = muted;
        muted = true;
        change.run();
        muted = before;
    }

    /** Whether something is typed that is not handed in. */
    public boolean typed() {
        return typed;
    }

    /** Hands in now what was typed. */
    public void handIn() {
        pause.stop();
        if (typed) {
            typed = false;
            changed.run();
        }
    }

    /** In a dialog Enter also does what the dialog asks. */
    private AbstractAction enter(JTextComponent field) {
        return new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                handIn();
                JButton main = field.getRootPane().getDefaultButton();
                if (main != null) {
                    main.doClick();
                }
            }
        };
    }

    private void type() {
        if (!muted) {
            typed = true;
            pause.restart();
        }
    }
}
