package counterstep.editor.findings;

import counterstep.check.About;
import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.TextInput;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.Severity;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** One check in the settings: what it looks for, how bad that is here, and why. */
final class SettingRow {
    private static final int SENTENCE = 450;

    private final About about;
    private final Optional<CheckSetting> kept;
    private final ChoiceInput<Optional<Severity>> severity;
    private final TextInput reason;
    private final JPanel panel = new JPanel(new BorderLayout(16, 2));
    private final Runnable changed;

    /**
     * A row.
     *
     * @param about the check
     * @param kept what the document says of it, if anything
     * @param changed runs when the choice or the reason is another
     */
    SettingRow(About about, Optional<CheckSetting> kept, Runnable changed) {
        this.about = about;
        this.kept = kept;
        this.changed = changed;
        severity =
                new ChoiceInput<>(about.name(), choices(), this::word, this::chosen)
                        .named("setting." + about.id());
        reason =
                new TextInput("Reason", () -> {})
                        .named("reason." + about.id())
                        .hint("why, in this document")
                        .whileTyping(changed);
        severity.show(kept.map(CheckSetting::severity).orElse(Optional.of(about.severity())));
        reason.show(kept.map(CheckSetting::reason).orElse(""));
        panel.setBorder(BorderFactory.createEmptyBorder(6, 0, 6, 0));
        panel.add(words(), BorderLayout.CENTER);
        panel.add(choice(), BorderLayout.LINE_END);
        panel.add(reason.component(), BorderLayout.SOUTH);
        showReason();
    }

    private static List<Optional<Severity>> choices() {
        List<Optional<Severity>> choices = new ArrayList<>();
        Arrays.stream(Severity.values()).map(Optional::of).forEach(choices::add);
        choices.add(Optional.empty());
        return choices;
    }

    private String word(Optional<Severity> choice) {
        String word = choice.map(Severity::word).orElse("off");
        String capital = word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
        return usual(choice) ? capital + ", as usual" : capital;
    }

    private boolean usual(Optional<Severity> choice) {
        return choice.equals(Optional.of(about.severity()));
    }

    private JComponent words() {
        JLabel name = new JLabel(about.name());
        name.putClientProperty("FlatLaf.styleClass", "strong");
        WrappedText fault = new WrappedText(Palette.SOFT, Type.SMALL);
        fault.setText(about.fault());
        fault.setPreferredSize(new Dimension(SENTENCE, fault.heightAt(SENTENCE)));
        JPanel words = new JPanel(new BorderLayout(0, 2));
        words.add(name, BorderLayout.NORTH);
        words.add(fault, BorderLayout.CENTER);
        return words;
    }

    private JComponent choice() {
        JPanel top = new JPanel(new BorderLayout());
        top.add(severity.component(), BorderLayout.NORTH);
        top.setPreferredSize(new Dimension(170, top.getPreferredSize().height));
        return top;
    }

    private void chosen() {
        showReason();
        changed.run();
    }

    private void showReason() {
        reason.component().setVisible(!usual(severity.value()));
        panel.revalidate();
    }

    JComponent component() {
        return panel;
    }

    /** Whether it is taken less seriously than usual, and nobody says why. */
    boolean owesReason() {
        boolean lowered =
                severity.value().map(one -> one.compareTo(about.severity()) > 0).orElse(true);
        return lowered && reason.value().isEmpty();
    }

    /** The name on screen. */
    String name() {
        return about.name();
    }

    /** What the document is to say of it; nothing where it is as usual. */
    Optional<CheckSetting> setting() {
        return usual(severity.value())
                ? Optional.empty()
                : Optional.of(
                        new CheckSetting(
                                about.id(),
                                severity.value(),
                                reason.value(),
                                kept.map(CheckSetting::extras).orElse(Extras.NONE)));
    }
}
