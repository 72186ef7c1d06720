package counterstep.editor.find;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.editor.form.KeyPress;
import counterstep.editor.form.Typing;
import counterstep.editor.theme.Palette;
import counterstep.find.StepSearch;
import counterstep.model.StepId;
import java.awt.FlowLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Words lead to the steps that say them, one after the other; out of sight until asked for. */
public final class FindBar implements DeskPanel {
    private static final int COLUMNS = 24;

    private final Desk desk;
    private final JPanel bar = new Ground();
    private final JTextField field = new JTextField(COLUMNS);
    private final JLabel place = new JLabel();
    private Runnable leaving = () -> {};
    private List<StepId> found = List.of();

    /** A bar that finds steps of what lies on the desk. */
    public FindBar(Desk desk) {
        this.desk = desk;
        field.setName("find");
        field.getAccessibleContext().setAccessibleName("Find a step");
        field.putClientProperty("JTextField.placeholderText", "Find a step: words, or its number");
        field.getDocument().addDocumentListener(new Typing(this::typed));
        place.setName("found");
        place.putClientProperty("FlatLaf.styleClass", "small");
        bar.add(field);
        bar.add(button("Previous", () -> go(-1)));
        bar.add(button("Next", () -> go(1)));
        bar.add(button("Close", this::leave));
        bar.add(place);
        KeyPress.on(field, "ENTER", () -> go(1));
        KeyPress.on(field, "DOWN", () -> go(1));
        KeyPress.on(field, "shift ENTER", () -> go(-1));
        KeyPress.on(field, "UP", () -> go(-1));
        KeyPress.on(field, "ESCAPE", this::leave);
        bar.setVisible(false);
        desk.onState(this::follow);
    }

    private static JButton button(String word, Runnable act) {
        JButton button = new JButton(word);
        button.setName("find." + word);
        button.putClientProperty("FlatLaf.styleClass", "quiet");
        button.setFocusable(false);
        button.addActionListener(event -> act.run());
        return button;
    }

    @Override
    public String title() {
        return "Find step";
    }

    @Override
    public JComponent component() {
        return bar;
    }

    /** Shows the bar, the cursor in its field. */
    public void enter() {
        bar.setVisible(true);
        field.requestFocusInWindow();
        field.selectAll();
        look(desk.state());
    }

    /** Goes to the step found after the selected one, around the end; asks where nothing is. */
    public void next() {
        goOrEnter(1);
    }

    /** Goes to the step found before the selected one. */
    public void previous() {
        goOrEnter(-1);
    }

    /** Tells who gets the focus when the bar goes. */
    public void onLeave(Runnable listener) {
        leaving = listener;
    }

    private void leave() {
        bar.setVisible(false);
        leaving.run();
    }

    private void goOrEnter(int by) {
        if (!bar.isVisible() || field.getText().isBlank()) {
            enter();
        } else {
            go(by);
        }
    }

    private void typed() {
        look(desk.state());
        if (!found.isEmpty() && here() < 0) {
            desk.select(Selection.of(found.get(0)));
        }
    }

    private void go(int by) {
        int here = here();
        if (!found.isEmpty()) {
            int from = here < 0 && by < 0 ? 0 : here;
            desk.select(Selection.of(found.get(Math.floorMod(from + by, found.size()))));
        }
    }

    private int here() {
        return desk.state().selection().onlyStep().map(found::indexOf).orElse(-1);
    }

    private void follow(DeskState state) {
        if (bar.isVisible()) {
            look(state);
        }
    }

    private void look(DeskState state) {
        found = StepSearch.in(state.procedure(), field.getText());
        place.setText(place());
    }

    private String place() {
        if (field.getText().isBlank()) {
            return "";
        }
        int here = here();
        if (found.isEmpty()) {
            return "no step says that";
        }
        return here < 0 ? found.size() + " found" : (here + 1) + " of " + found.size();
    }

    /** A quiet ground over the step graph, in the colours of the theme that is on. */
    private static final class Ground extends JPanel {
        Ground() {
            super(new FlowLayout(FlowLayout.LEADING, 4, 8));
            setName("find bar");
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setBackground(Palette.PANEL.color());
            setBorder(
                    BorderFactory.createCompoundBorder(
                            BorderFactory.createMatteBorder(0, 0, 1, 0, Palette.LINE.color()),
                            BorderFactory.createEmptyBorder(0, 8, 0, 8)));
        }
    }
}
