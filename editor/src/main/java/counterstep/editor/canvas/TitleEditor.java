package counterstep.editor.canvas;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.theme.Type;
import counterstep.model.StepId;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** A field on a step to type its title in place: Enter or leaving hands it in, Escape does not. */
final class TitleEditor {
    private static final int LEAST_HEIGHT = 28;

    private final Desk desk;
    private final GraphPane pane;
    private final Viewpoint viewpoint;
    private final JTextField field = new JTextField();
    private Optional<StepId> open = Optional.empty();

    TitleEditor(Desk desk, GraphPane pane, Viewpoint viewpoint) {
        this.desk = desk;
        this.pane = pane;
        this.viewpoint = viewpoint;
        field.setName("step title");
        field.getAccessibleContext().setAccessibleName("Title of the step");
        field.putClientProperty("JTextField.placeholderText", "What is done");
        field.addActionListener(event -> close(true));
        field.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "cancel");
        field.getActionMap().put("cancel", new Cancel());
        field.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        if (!event.isTemporary()) {
                            handIn();
                        }
                    }
                });
    }

    /** Opens on a step, after handing in what was typed on another. */
    void open(StepId step) {
        handIn();
        open = Optional.of(step);
        field.setText(desk.state().procedure().step(step).title());
        pane.getGraphControl().add(field);
        follow();
        field.selectAll();
        field.requestFocusInWindow();
    }

    /** Hands in what is typed, if it is open. */
    void handIn() {
        if (open.isPresent()) {
            finish(true);
        }
    }

    /** Stays on its step when the drawing moves; goes when the step is gone. */
    void follow() {
        if (open.isEmpty()) {
            return;
        }
        Scene seen = ((StepCells) pane.getGraph()).seen();
        seen.card(open.get()).ifPresentOrElse(this::place, () -> finish(false));
    }

    private void place(Card card) {
        Rectangle2D title =
                new Rectangle2D.Double(card.x() + 34, card.y() + 3, Measures.WIDTH - 40, 28);
        Rectangle bounds = viewpoint.toControl(title);
        float size = (float) Math.max(11, 13 * viewpoint.zoom());
        field.setFont(Type.BODY_STRONG.font().deriveFont(size));
        int height = Math.max(LEAST_HEIGHT, bounds.height);
        field.setBounds(bounds.x, bounds.y, Math.max(140, bounds.width), height);
        field.revalidate();
        pane.getGraphControl().repaint();
    }

    private void close(boolean keep) {
        finish(keep);
        pane.getGraphControl().requestFocusInWindow();
    }

    private void finish(boolean keep) {
        StepId step = open.orElseThrow();
        open = Optional.empty();
        pane.getGraphControl().remove(field);
        pane.getGraphControl().repaint();
        if (keep && desk.state().procedure().steps().stream().anyMatch(s -> s.id().equals(step))) {
            desk.apply(new RenameStep(step, field.getText()));
        }
    }

    private final class Cancel extends AbstractAction {
        @Override
        public void actionPerformed(ActionEvent event) {
            close(false);
        }
    }
}
