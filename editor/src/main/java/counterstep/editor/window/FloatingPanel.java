package counterstep.editor.window;

import java.awt.Frame;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.WindowConstants;

/** A panel in a window of its own, which obeys the keys of the main window. */
final class FloatingPanel {
    private final PanelHolder holder;
    private final JDialog window;

    /**
     * A window, not shown yet.
     *
     * @param owner the main window
     * @param holder the panel
     * @param bounds place and size on the screen
     * @param back puts the panel back where it came from
     * @param hide hides the panel
     */
    FloatingPanel(Frame owner, PanelHolder holder, Rectangle bounds, Runnable back, Runnable hide) {
        this.holder = holder;
        window = new JDialog(owner, holder.title(), false);
        window.setName("floating " + holder.name());
        JButton button = new JButton("Put back");
        button.putClientProperty("FlatLaf.styleClass", "word");
        button.setName("Put back");
        button.addActionListener(event -> back.run());
        holder.undock(button);
        window.setContentPane(holder.component());
        window.setBounds(bounds);
        window.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        window.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowClosing(WindowEvent event) {
                        hide.run();
                    }
                });
    }

    PanelHolder holder() {
        return holder;
    }

    /** The commands of the main window do by key here what they do there. */
    void obey(List<Commands.Entry> commands) {
        JComponent root = window.getRootPane();
        for (Commands.Entry entry : commands) {
            entry.key()
                    .ifPresent(
                            key -> {
                                root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                                        .put(key, key.toString());
                                root.getActionMap().put(key.toString(), entry.action());
                            });
        }
    }

    void show(boolean shown) {
        if (window.isVisible() != shown) {
            window.setVisible(shown);
        }
    }

    /** Comes and goes with the panels of the main window, which keeps the keyboard. */
    void follow(boolean shown) {
        window.setAutoRequestFocus(false);
        show(shown);
        window.setAutoRequestFocus(true);
    }

    void toFront() {
        window.toFront();
        holder.panel().component().transferFocus();
    }

    void retitle() {
        window.setTitle(holder.title());
    }

    Rectangle bounds() {
        return window.getBounds();
    }

    /** The panel goes elsewhere. */
    void close() {
        window.setContentPane(new JPanel());
        window.dispose();
    }
}
