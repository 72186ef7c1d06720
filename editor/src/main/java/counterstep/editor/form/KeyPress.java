package counterstep.editor.form;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** What a key does; keys are written as {@link KeyStroke#getKeyStroke(String)} reads them. */
public final class KeyPress {
    private KeyPress() {}

    /** While the component has the focus. */
    public static void on(JComponent component, String key, Runnable act) {
        bind(component, component.getInputMap(), key, act);
    }

    /** While the focus is anywhere in the component's window. */
    public static void inWindow(JComponent component, String key, Runnable act) {
        bind(component, component.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW), key, act);
    }

    /** While the focus is in the component or in one within it. */
    public static void within(JComponent component, String key, Runnable act) {
        bind(
                component,
                component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT),
                key,
                act);
    }

    private static void bind(JComponent component, InputMap keys, String key, Runnable act) {
        keys.put(KeyStroke.getKeyStroke(key), key);
        component
                .getActionMap()
                .put(
                        key,
                        new AbstractAction() {
                            @Override
                            public void actionPerformed(ActionEvent event) {
                                act.run();
                            }
                        });
    }
}
