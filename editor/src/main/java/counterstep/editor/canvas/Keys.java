package counterstep.editor.canvas;

import counterstep.editor.form.KeyPress;
import javax.swing.JComponent;

/** The keys of the graph while it has the focus. */
final class Keys {
    private static final double ZOOM = 1.2;

    private final JComponent control;

    Keys(JComponent control) {
        this.control = control;
    }

    void install(Commands commands, Viewpoint viewpoint, Gestures gestures) {
        on("UP", () -> commands.go(0, -1));
        on("DOWN", () -> commands.go(0, 1));
        on("LEFT", () -> commands.go(-1, 0));
        on("RIGHT", () -> commands.go(1, 0));
        on("F2", commands::renameSelected);
        on("ENTER", commands::enter);
        on("INSERT", commands::addAfterSelection);
        on("DELETE", commands::deleteSelected);
        on("BACK_SPACE", commands::deleteSelected);
        on("ESCAPE", gestures::cancel);
        on("ctrl A", commands::selectAll);
        on("ctrl PLUS", () -> viewpoint.zoomBy(ZOOM));
        on("ctrl EQUALS", () -> viewpoint.zoomBy(ZOOM));
        on("ctrl ADD", () -> viewpoint.zoomBy(ZOOM));
        on("ctrl MINUS", () -> viewpoint.zoomBy(1 / ZOOM));
        on("ctrl SUBTRACT", () -> viewpoint.zoomBy(1 / ZOOM));
        on("ctrl 0", viewpoint::zoomActual);
        on("ctrl NUMPAD0", viewpoint::zoomActual);
    }

    /** Escape does something beside giving up a drag. */
    void escape(Gestures gestures, Runnable also) {
        on(
                "ESCAPE",
                () -> {
                    gestures.cancel();
                    also.run();
                });
    }

    private void on(String key, Runnable command) {
        KeyPress.on(control, key, command);
    }
}
