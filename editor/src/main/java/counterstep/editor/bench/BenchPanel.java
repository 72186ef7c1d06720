package counterstep.editor.bench;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.theme.PlainText;
import counterstep.model.Phase;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/**
 * What is still in place, open or loose, and on the mat after a step: that of the selected step, or
 * where the slider is moved to, which selects.
 */
public final class BenchPanel implements DeskPanel {
    private static final String BENCH = "bench";
    private static final String NONE = "none";

    private final Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final StepSlider slider = new StepSlider();
    private final JScrollPane scroll = new JScrollPane();
    private final JLabel none = new JLabel();
    private final JLabel after = PlainText.in(new JLabel());
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private boolean muted;

    /** The bench of what lies on a desk. */
    public BenchPanel(Desk desk) {
        this.desk = desk;
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(Columns.ROW);
        slider.addChangeListener(event -> moved());
        after.setName("bench after");
        after.putClientProperty("FlatLaf.styleClass", "small");
        none.setName("bench empty");
        none.putClientProperty("FlatLaf.styleClass", "soft");
        none.setVerticalAlignment(JLabel.TOP);
        none.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
        JPanel page = new JPanel(new BorderLayout());
        JPanel top = new JPanel(new BorderLayout());
        top.setBorder(BorderFactory.createEmptyBorder(6, 4, 4, 4));
        top.add(slider);
        page.add(top, BorderLayout.NORTH);
        page.add(scroll, BorderLayout.CENTER);
        panel.add(page, BENCH);
        panel.add(none, NONE);
        cards.show(panel, NONE);
        desk.onState(state -> whileShown.changed());
        desk.onAnalysis(analysis -> whileShown.changed());
    }

    @Override
    public String title() {
        return "On the bench";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> tabControls() {
        JPanel end = new JPanel(new BorderLayout());
        end.setOpaque(false);
        end.setBorder(BorderFactory.createEmptyBorder(0, 16, 0, 16));
        after.setHorizontalAlignment(JLabel.TRAILING);
        end.add(after, BorderLayout.CENTER);
        return Optional.of(end);
    }

    private void moved() {
        if (!muted) {
            desk.analysis()
                    .map(analysis -> analysis.procedure().steps().get(slider.getValue() - 1).id())
                    .ifPresent(step -> desk.select(Selection.of(step)));
        }
    }

    private void render() {
        Optional<Analysis> analysis = desk.analysis();
        List<Step> steps = analysis.map(now -> now.procedure().steps()).orElse(List.of());
        if (steps.isEmpty()) {
            none.setText(
                    analysis.isEmpty()
                            ? "The bench is being laid out."
                            : "What is open and what lies on the mat after each step will be shown here"
                                    + " as you draw.");
            after.setText("");
            cards.show(panel, NONE);
        } else {
            render(analysis.orElseThrow(), steps);
            cards.show(panel, BENCH);
        }
    }

    private void render(Analysis analysis, List<Step> steps) {
        int number =
                selected()
                        .flatMap(analysis.index()::findStep)
                        .map(step -> analysis.index().number(step.id()))
                        .orElse(Math.min(slider.getValue(), steps.size()));
        muted = true;
        slider.show(steps.size(), phases(steps), number);
        muted = false;
        Step step = steps.get(number - 1);
        String words = "after step %d of %d: %s".formatted(number, steps.size(), step.title());
        after.setText(words);
        slider.getAccessibleContext().setAccessibleDescription(words);
        int top = scroll.getVerticalScrollBar().getValue();
        scroll.setViewportView(Columns.of(Bench.of(analysis, step.id())));
        scroll.getVerticalScrollBar().setValue(top);
    }

    /** The step selected last. */
    private Optional<StepId> selected() {
        Set<StepId> steps = desk.state().selection().steps();
        return steps.stream().reduce((earlier, later) -> later);
    }

    private static List<StepSlider.Mark> phases(List<Step> steps) {
        Set<Phase> seen = EnumSet.noneOf(Phase.class);
        List<StepSlider.Mark> marks = new ArrayList<>();
        for (int place = 0; place < steps.size(); place++) {
            Phase phase = steps.get(place).phase();
            if (seen.add(phase)) {
                marks.add(new StepSlider.Mark(place + 1, phase.word()));
            }
        }
        return marks;
    }
}
