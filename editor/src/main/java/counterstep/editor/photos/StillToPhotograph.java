package counterstep.editor.photos;

import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.WideList;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;

/** Steps that act on something and show no photo. */
final class StillToPhotograph {
    private record Row(StepId step, int number, String title) {
        @Override
        public String toString() {
            return number + "  " + title;
        }
    }

    private final DefaultListModel<Row> rows = new DefaultListModel<>();
    private final JList<Row> list = new WideList<>(rows);
    private final JLabel head = new JLabel();
    private final JPanel panel = new JPanel(new BorderLayout());
    private boolean muted;

    /** A list; {@code visit} gets the step that is chosen. */
    StillToPhotograph(Consumer<StepId> visit) {
        list.setName("still to be photographed");
        list.getAccessibleContext().setAccessibleName("Still to be photographed");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFixedCellHeight(24);
        list.getInputMap().put(KeyStroke.getKeyStroke("ctrl V"), "none"); // the panel pastes
        list.setCellRenderer(new Renderer());
        list.addListSelectionListener(
                event -> {
                    if (!muted && list.getSelectedValue() != null) {
                        visit.accept(list.getSelectedValue().step());
                    }
                });
        head.putClientProperty("FlatLaf.styleClass", "label");
        head.setBorder(BorderFactory.createEmptyBorder(8, 16, 4, 8));
        panel.add(head, BorderLayout.NORTH);
        panel.add(new JScrollPane(list), BorderLayout.CENTER);
        panel.setPreferredSize(new Dimension(240, 200));
    }

    JComponent component() {
        return panel;
    }

    void show(Procedure procedure) {
        muted = true;
        rows.clear();
        int number = 0;
        for (Step step : procedure.steps()) {
            number++;
            if (step.photos().isEmpty() && !step.actions().isEmpty()) {
                rows.addElement(new Row(step.id(), number, step.title()));
            }
        }
        head.setText(
                rows.isEmpty()
                        ? "Every step that acts shows a photo"
                        : "Still to be photographed: " + rows.size());
        muted = false;
    }

    private static final class Renderer extends DefaultListCellRenderer {
        Renderer() {
            PlainText.in(this);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, value, index, selected, focused);
            setBorder(BorderFactory.createEmptyBorder(0, 16, 0, 8));
            return this;
        }
    }
}
