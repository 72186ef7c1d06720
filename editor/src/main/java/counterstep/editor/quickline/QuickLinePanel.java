package counterstep.editor.quickline;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.model.StepId;
import counterstep.shorthand.Completion;
import counterstep.shorthand.Completions;
import counterstep.shorthand.Reading;
import counterstep.shorthand.Shorthand;
import java.awt.BorderLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/**
 * A field to type steps into, in the trade's shorthand. Enter makes the step below the selected one
 * and leaves the field ready for the next; Tab completes.
 */
public final class QuickLinePanel implements DeskPanel {
    private final Desk desk;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final LineField field = new LineField();
    private final DropDown below = new DropDown(field, this::take);
    private final Set<StepId> inARow = new LinkedHashSet<>();
    private Runnable leaving = () -> {};

    /** A quick line for what lies on the desk. */
    public QuickLinePanel(Desk desk) {
        this.desk = desk;
        panel.setOpaque(false);
        panel.add(field, BorderLayout.CENTER);
        LineKeys.install(field, this);
        field.getDocument().addDocumentListener(new Typed());
        field.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        show();
                    }

                    @Override
                    public void focusLost(FocusEvent event) {
                        below.close();
                    }
                });
        desk.onState(
                state -> {
                    if (!state.selection().onlyStep().equals(lastTyped())) {
                        inARow.clear();
                    }
                    show();
                });
    }

    private Optional<StepId> lastTyped() {
        return inARow.stream().reduce((one, later) -> later);
    }

    @Override
    public String title() {
        return "Quick line";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    /** Puts the cursor into the field. */
    public void enter() {
        field.requestFocusInWindow();
        field.selectAll();
    }

    /**
     * Selects the steps that were typed in a row, while the writer is still in the line: what is
     * done next is meant for all of them. Whoever selects something else meanwhile means that.
     */
    public void selectTyped() {
        if (field.isFocusOwner() && inARow.size() > 1) {
            desk.select(Selection.ofSteps(new LinkedHashSet<>(inARow)));
        }
    }

    /** Tells who gets the focus when the writer leaves the line. */
    public void onLeave(Runnable listener) {
        leaving = listener;
    }

    /** Makes the step; the words stay where the edit is refused. */
    void make() {
        Optional<Reading> reading = reading();
        if (reading.isEmpty()) {
            return;
        }
        Optional<String> refused = desk.apply(reading.get().edit());
        if (refused.isPresent()) {
            below.tell(refused.get());
            return;
        }
        field.setText("");
        reading.get().step().filter(step -> reading.get().newStep()).ifPresent(inARow::add);
        reading.get().step().map(Selection::of).ifPresent(desk::select);
    }

    /** Completes the line; false where nothing is left to complete. */
    boolean complete() {
        Optional<Completion> chosen = below.chosen();
        chosen.ifPresent(this::take);
        return chosen.isPresent();
    }

    void choose(int down) {
        below.choose(down);
        explain();
    }

    void leave() {
        below.close();
        leaving.run();
    }

    private void take(Completion completion) {
        field.setText(completion.line());
        field.requestFocusInWindow();
    }

    private Optional<Reading> reading() {
        List<StepId> selected = List.copyOf(desk.state().selection().steps());
        Optional<StepId> above =
                selected.isEmpty()
                        ? Optional.empty()
                        : Optional.of(selected.get(selected.size() - 1));
        String line = below.picked().map(Completion::line).orElseGet(field::getText);
        return Shorthand.read(desk.state().procedure(), above, line);
    }

    private void show() {
        below.offer(
                field.isFocusOwner()
                        ? Completions.of(desk.state().procedure(), field.getText())
                        : List.of());
        explain();
    }

    private void explain() {
        Optional<Reading> reading = reading();
        String says = reading.map(Reading::explanation).orElse("");
        field.hint(reading);
        field.getAccessibleContext().setAccessibleDescription(says);
        if (field.isFocusOwner() && !says.isEmpty()) {
            below.tell(says);
        } else {
            below.close();
        }
    }

    private final class Typed implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            show();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            show();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            show();
        }
    }
}
