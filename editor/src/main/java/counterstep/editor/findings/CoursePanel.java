package counterstep.editor.findings;

import counterstep.editor.desk.Replayed;
import counterstep.editor.form.Form;
import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.model.StepId;
import counterstep.review.HowItGoesWrong;
import counterstep.review.HowItGoesWrong.Line;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;

/** How it goes wrong: the chosen finding as an order of steps, which can be walked through. */
final class CoursePanel {
    private static final String NOTHING =
            "Choose a finding: the order in which it goes wrong stands here.";

    /** Room for both buttons with their longest words. */
    private static final int BUTTONS = 190;

    private final JPanel panel = new JPanel(new BorderLayout());
    private final DefaultListModel<Line> lines = new DefaultListModel<>();
    private final CourseRenderer renderer = new CourseRenderer();
    private final JList<Line> list = new Lines();
    private final WrappedText note = new WrappedText(Palette.FAINT, Type.SMALL);
    private final JButton play = new JButton("Replay");
    private final JButton forward = new JButton("Next step");
    private final Replay replay = new Replay(this::walked);
    private final Consumer<List<StepId>> chosen;
    private final Consumer<Replayed> walk;
    private boolean muted;

    /**
     * An empty panel.
     *
     * @param chosen gets the steps of a line that is chosen
     * @param walk gets how far an order is walked through
     */
    CoursePanel(Consumer<List<StepId>> chosen, Consumer<Replayed> walk) {
        this.chosen = chosen;
        this.walk = walk;
        panel.add(head(), BorderLayout.NORTH);
        panel.add(body(), BorderLayout.CENTER);
        panel.setMinimumSize(new Dimension(200, 80));
        on("ESCAPE", replay::stop);
        on("SPACE", replay::stepOrEnd);
        show(Optional.empty(), "");
    }

    JComponent component() {
        return panel;
    }

    private JComponent head() {
        JLabel title = new JLabel("How it goes wrong");
        title.putClientProperty("FlatLaf.styleClass", "panelHead");
        button(play, "replay", replay::playOrPause);
        button(forward, "replay next step", replay::stepOrEnd);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 0, 0));
        buttons.setOpaque(false);
        buttons.add(play);
        buttons.add(forward);
        JPanel head = new JPanel(new BorderLayout());
        head.setBorder(BorderFactory.createEmptyBorder(4, 16, 2, 8));
        head.add(title, BorderLayout.LINE_START);
        head.add(buttons, BorderLayout.LINE_END);
        head.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        int needed = title.getPreferredSize().width + BUTTONS;
                        boolean narrow = head.getWidth() < needed;
                        head.add(buttons, narrow ? BorderLayout.SOUTH : BorderLayout.LINE_END);
                        head.revalidate();
                    }
                });
        return head;
    }

    private static void button(JButton button, String name, Runnable act) {
        button.setName(name);
        button.putClientProperty("FlatLaf.styleClass", "word");
        button.addActionListener(event -> act.run());
    }

    private JComponent body() {
        list.setName("how it goes wrong");
        list.setCellRenderer(renderer);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("How it goes wrong");
        list.addListSelectionListener(event -> choose(event.getValueIsAdjusting()));
        list.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        muted = true;
                        list.clearSelection(); // so that it can be chosen again
                        muted = false;
                    }
                });
        list.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        measure();
                    }
                });
        note.setName("in how many orders");
        note.setBorder(BorderFactory.createEmptyBorder(6, 16, 10, 16));
        JScrollPane scroll = new JScrollPane(new Form().wide(list).wide(note).end());
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        return scroll;
    }

    private void on(String key, Runnable act) {
        KeyPress.on(list, key, act);
    }

    /** Tells another finding, or none; what is told already stays as it is. */
    void show(Optional<HowItGoesWrong> told, String waiver) {
        List<Line> next = told.map(HowItGoesWrong::lines).orElse(List.of());
        String said = waiver.isEmpty() ? told.map(HowItGoesWrong::note).orElse(NOTHING) : waiver;
        if (next.equals(java.util.Collections.list(lines.elements()))
                && note.getText().equals(said)) {
            return;
        }
        muted = true;
        lines.clear();
        lines.addAll(next);
        muted = false;
        note.setText(said);
        replay.take(told);
        play.setVisible(replay.possible());
        forward.setVisible(replay.possible());
        measure();
        panel.revalidate();
    }

    /** Plays the order, or pauses. */
    void playOrPause() {
        if (replay.possible()) {
            replay.playOrPause();
        }
    }

    /** Does the next step of the order. */
    void forward() {
        if (replay.possible()) {
            replay.stepOrEnd();
        }
    }

    /** Ends a walk that is going on. */
    void endWalk() {
        replay.stop();
    }

    private void choose(boolean adjusting) {
        Line line = list.getSelectedValue();
        if (!muted && !adjusting && line != null && !line.steps().isEmpty()) {
            chosen.accept(line.steps());
        }
    }

    private void walked() {
        play.setText(replay.playing() ? "Pause" : "Replay");
        forward.setText(replay.ended() ? "End replay" : "Next step");
        renderer.reach(replay.line());
        if (replay.line() >= 0) {
            list.ensureIndexIsVisible(replay.line());
        }
        list.repaint();
        walk.accept(replay.shown());
    }

    /** Lines wrap: how high they are depends on how wide the list is. */
    private void measure() {
        list.setFixedCellHeight(1);
        list.setFixedCellHeight(-1);
    }

    private final class Lines extends JList<Line> {
        Lines() {
            super(lines);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }
}
