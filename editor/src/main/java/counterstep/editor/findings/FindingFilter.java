package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.theme.SeverityMark;
import counterstep.model.Severity;
import java.awt.FlowLayout;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;

/** Which findings are listed: by severity, by check, waived ones or not. */
final class FindingFilter {
    private static final String ALL = "";

    private final JPanel panel = new JPanel(new FlowLayout(FlowLayout.TRAILING, 4, 2));
    private final Map<Severity, JToggleButton> severities = new EnumMap<>(Severity.class);
    private final JToggleButton waived = new JToggleButton();
    private final ChoiceInput<String> check;
    private List<Finding> all = List.of();

    /** A filter that lets all pass, and runs {@code changed} when it is set otherwise. */
    FindingFilter(Runnable changed) {
        panel.setOpaque(false);
        for (Severity severity : Severity.values()) {
            JToggleButton button = new JToggleButton("0", new SeverityMark(severity), true);
            toggle(button, "show " + severity.word() + "s", changed);
            severities.put(severity, button);
        }
        waived.setSelected(true);
        toggle(waived, "show waived", changed);
        check = new ChoiceInput<>("Check", List.of(ALL), this::word, changed).named("show check");
        panel.add(check.component());
        panel.setVisible(false);
    }

    private void toggle(AbstractButton button, String name, Runnable changed) {
        button.setName(name);
        button.putClientProperty("FlatLaf.styleClass", "filter");
        button.getAccessibleContext().setAccessibleName(name);
        button.setToolTipText(name);
        button.addActionListener(event -> changed.run());
        panel.add(button);
    }

    private String word(String id) {
        return id.equals(ALL) ? "all checks" : id.replace('-', ' ');
    }

    JComponent component() {
        return panel;
    }

    /** Counts findings, and offers their checks. */
    void count(List<Finding> findings) {
        all = findings;
        severities.forEach(
                (severity, button) ->
                        button.setText(
                                Long.toString(
                                        open().filter(one -> one.severity() == severity).count())));
        long accepted = findings.size() - open().count();
        waived.setText(accepted + " waived");
        waived.setVisible(accepted > 0);
        check.offer(
                Stream.concat(Stream.of(ALL), findings.stream().map(Finding::check).distinct())
                        .toList());
        panel.setVisible(!findings.isEmpty());
    }

    private Stream<Finding> open() {
        return all.stream().filter(Finding::open);
    }

    /** How many count. */
    long openCount() {
        return open().count();
    }

    /** The findings to list: open ones first, waived ones after them. */
    List<Finding> passed() {
        return Stream.concat(open(), all.stream().filter(one -> !one.open() && waived.isSelected()))
                .filter(one -> !one.open() || severities.get(one.severity()).isSelected())
                .filter(one -> check.value().equals(ALL) || one.check().equals(check.value()))
                .toList();
    }
}
