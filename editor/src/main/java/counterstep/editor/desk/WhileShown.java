package counterstep.editor.desk;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;

/** Renders a component when what it shows has changed, but not while nobody can see it. */
public final class WhileShown {
    private final JComponent component;
    private final Runnable render;
    private boolean stale = true;

    /** Renders when the component comes into sight, and at every change while it is. */
    public WhileShown(JComponent component, Runnable render) {
        this.component = component;
        this.render = render;
        component.addHierarchyListener(
                event -> {
                    if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                        renderIfSeen();
                    }
                });
    }

    /** What it shows has changed. */
    public void changed() {
        stale = true;
        renderIfSeen();
    }

    /** Somebody asks for what it shows, seen or not. */
    public void now() {
        if (stale) {
            stale = false;
            render.run();
        }
    }

    private void renderIfSeen() {
        if (component.isShowing()) {
            now();
        }
    }
}
