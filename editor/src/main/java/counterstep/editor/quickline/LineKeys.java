package counterstep.editor.quickline;

import counterstep.editor.form.KeyPress;
import javax.swing.JComponent;

/** The keys of the quick line while it has the focus. */
final class LineKeys {
    private final JComponent field;

    private LineKeys(JComponent field) {
        this.field = field;
    }

    static void install(JComponent field, QuickLinePanel line) {
        LineKeys keys = new LineKeys(field);
        field.setFocusTraversalKeysEnabled(false); // Tab completes, and moves on where it cannot
        keys.on("ENTER", line::make);
        keys.on("UP", () -> line.choose(-1));
        keys.on("DOWN", () -> line.choose(1));
        keys.on("ESCAPE", line::leave);
        keys.on("shift TAB", field::transferFocusBackward);
        keys.on(
                "TAB",
                () -> {
                    if (!line.complete()) {
                        field.transferFocus();
                    }
                });
    }

    private void on(String key, Runnable act) {
        KeyPress.on(field, key, act);
    }
}
