package counterstep.editor.window;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.beans.PropertyChangeListener;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** The panel that has the keyboard, or had it last: while a menu is open nothing else has it. */
final class FocusedPanel {
    private static final String OWNER = "permanentFocusOwner";

    private final List<PanelHolder> holders;
    private final Collection<PanelRegion> regions;
    private final List<Runnable> listeners = new ArrayList<>();
    private PanelHolder last;

    FocusedPanel(JFrame frame, List<PanelHolder> holders, Collection<PanelRegion> regions) {
        this.holders = holders;
        this.regions = regions;
        last = holders.get(0);
        KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        PropertyChangeListener follow = event -> follow(focus.getPermanentFocusOwner());
        focus.addPropertyChangeListener(OWNER, follow);
        frame.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowClosed(WindowEvent event) {
                        focus.removePropertyChangeListener(OWNER, follow);
                    }
                });
    }

    String name() {
        return last.name();
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** The user has turned to a panel, whether or not the keyboard has gone there. */
    void note(PanelHolder holder) {
        if (holder != last) {
            last = holder;
            listeners.forEach(Runnable::run);
        }
    }

    private void follow(Component owner) {
        if (owner == null) {
            return; // Java's word for none: another program has the keyboard
        }
        Optional<PanelHolder> within =
                holders.stream()
                        .filter(each -> SwingUtilities.isDescendingFrom(owner, each.component()))
                        .findFirst()
                        .or(() -> ofTabs(owner));
        within.ifPresent(this::note);
    }

    private Optional<PanelHolder> ofTabs(Component owner) {
        return regions.stream()
                .filter(region -> region.tabs().equals(owner))
                .findFirst()
                .flatMap(PanelRegion::front);
    }
}
