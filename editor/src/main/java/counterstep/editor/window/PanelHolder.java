package counterstep.editor.window;

import counterstep.editor.desk.DeskPanel;
import counterstep.editor.remembered.Side;
import counterstep.editor.theme.Theme;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;

/**
 * One panel with what belongs to it. Below, the row shows its controls and what stands beside it;
 * anywhere else they stand above and below it, since there is no row for them.
 */
final class PanelHolder {
    private static final int BESIDE = 318;

    private final DeskPanel panel;
    private final JPanel whole = new JPanel(new BorderLayout());
    private String count = "";
    private Theme dressed = Theme.current();

    /**
     * A holder.
     *
     * @param panel what it holds
     * @param titled is told whenever its title has changed
     */
    PanelHolder(DeskPanel panel, Consumer<PanelHolder> titled) {
        this.panel = panel;
        panel.onCount(
                now -> {
                    count = now;
                    titled.accept(this);
                });
    }

    DeskPanel panel() {
        return panel;
    }

    /** The name of the panel. */
    String name() {
        return panel.title();
    }

    /** Its name, and how much is in it: 'Findings 4'. */
    String title() {
        return count.isEmpty() ? name() : name() + " " + count;
    }

    /** What is put somewhere, the same one each time. */
    JComponent component() {
        return whole;
    }

    /** What stands beside it in the row below. */
    Optional<JComponent> beside() {
        return panel.beside();
    }

    /** Whether its name can be read without a tab. */
    boolean headed() {
        return panel.ownHead().isPresent();
    }

    /** Makes it ready for a side. */
    void dock(Side side, boolean alone) {
        dress();
        whole.removeAll();
        panel.ownHead().ifPresent(head -> head.setVisible(alone));
        if (side == Side.BELOW) {
            panel.beside().ifPresent(beside -> beside.setPreferredSize(besideSize()));
            whole.add(panel.component(), BorderLayout.CENTER);
        } else {
            panel.tabControls().ifPresent(controls -> whole.add(row(controls), BorderLayout.NORTH));
            whole.add(aboveWhatBelongsToIt(), BorderLayout.CENTER);
        }
    }

    /** Makes it ready for a window of its own, with a control more at the end. */
    void undock(JComponent control) {
        dress();
        whole.removeAll();
        panel.ownHead().ifPresent(head -> head.setVisible(false));
        JPanel controls = new JPanel(new BorderLayout(8, 0));
        panel.tabControls().ifPresent(own -> controls.add(own, BorderLayout.CENTER));
        controls.add(control, BorderLayout.LINE_END);
        whole.add(row(controls), BorderLayout.NORTH);
        whole.add(aboveWhatBelongsToIt(), BorderLayout.CENTER);
    }

    private static JComponent row(JComponent controls) {
        JPanel row = new JPanel(new BorderLayout());
        row.setBorder(BorderFactory.createEmptyBorder(4, 8, 4, 8));
        row.add(controls, BorderLayout.LINE_END);
        return row;
    }

    private JComponent aboveWhatBelongsToIt() {
        if (panel.beside().isEmpty()) {
            return panel.component();
        }
        JComponent beside = panel.beside().get();
        beside.setPreferredSize(besideSize());
        return new LineSplit(
                JSplitPane.VERTICAL_SPLIT, panel.component(), beside, panel.component(), true);
    }

    private static Dimension besideSize() {
        return new Dimension(BESIDE, 200);
    }

    /** What was out of sight when the theme was switched still wears the other one. */
    void dress() {
        if (dressed != Theme.current()) {
            dressed = Theme.current();
            SwingUtilities.updateComponentTreeUI(panel.component());
            panel.tabControls().ifPresent(SwingUtilities::updateComponentTreeUI);
            panel.beside().ifPresent(SwingUtilities::updateComponentTreeUI);
            SwingUtilities.updateComponentTreeUI(whole);
        }
    }
}
