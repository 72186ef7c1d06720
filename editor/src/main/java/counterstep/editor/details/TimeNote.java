package counterstep.editor.details;

import counterstep.editor.theme.PlainText;
import counterstep.estimate.Estimate;
import counterstep.estimate.Estimates;
import counterstep.estimate.Row;
import counterstep.model.Numbers;
import counterstep.model.Step;
import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** What a step that states no time may take by figures, where they are from, and how to take it. */
final class TimeNote extends JPanel {
    private final JTextArea words = PlainText.in(new JTextArea());
    private final JButton use = new JButton("Use the estimate");
    private Optional<Estimate> shown = Optional.empty();

    TimeNote(IntConsumer take) {
        super(new BorderLayout(8, 0));
        setOpaque(false);
        words.setEditable(false);
        words.setFocusable(false);
        words.setOpaque(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setName("step.estimate");
        words.putClientProperty("FlatLaf.styleClass", "small");
        use.setName("step.use-estimate");
        use.putClientProperty("FlatLaf.styleClass", "quiet");
        use.addActionListener(event -> shown.ifPresent(found -> take.accept(found.seconds())));
        add(words, BorderLayout.CENTER);
        add(use, BorderLayout.LINE_END);
        setVisible(false);
    }

    /** Says nothing of a step that states a time, nor before the estimates are there. */
    void show(Step step, Optional<Estimates> estimates) {
        boolean untimed = step.seconds().isEmpty() && estimates.isPresent();
        shown = estimates.filter(there -> untimed).flatMap(found -> found.of(step.id()));
        setVisible(untimed);
        use.setVisible(shown.isPresent());
        if (untimed) {
            words.setText(
                    shown.map(found -> estimate(found, estimates.orElseThrow().source()))
                            .orElseGet(() -> none(step, estimates.orElseThrow())));
            words.setToolTipText(shown.map(TimeNote::rows).orElse(null));
        }
    }

    private static String estimate(Estimate found, String source) {
        return "No time stated. Estimate %s min:s, by figures: %s."
                .formatted(Numbers.minutesAndSeconds(found.seconds()), source);
    }

    private static String none(Step step, Estimates estimates) {
        String reason = estimates.none().getOrDefault(step.id(), "it is new");
        return "No time stated, and no estimate: " + reason + ".";
    }

    private static String rows(Estimate found) {
        return found.rows().stream().map(TimeNote::row).collect(Collectors.joining("; "));
    }

    private static String row(Row row) {
        return "%s: %d × %s s"
                .formatted(row.what(), row.times(), Numbers.plain(row.work() + row.handling()));
    }
}
