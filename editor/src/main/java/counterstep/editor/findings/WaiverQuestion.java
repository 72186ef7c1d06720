package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.editor.form.Form;
import counterstep.editor.form.Question;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.model.Extras;
import counterstep.model.Waiver;
import java.awt.Component;
import java.util.Optional;

/** Asks why a finding is accepted, and by whom. */
final class WaiverQuestion {
    private static final int WIDTH = 420;

    private final TextBlock reason = new TextBlock("Reason", 4, () -> {}).named("waiver.reason");
    private final TextInput name = new TextInput("Name", () -> {}).named("waiver.name");
    private final Finding finding;
    private final String date;
    private final Question question;

    /**
     * A question, not asked yet.
     *
     * @param owner what the dialog belongs to
     * @param finding what is to be accepted
     * @param by the name to begin with
     * @param date today, ISO 8601
     */
    WaiverQuestion(Component owner, Finding finding, String by, String date) {
        this.finding = finding;
        this.date = date;
        WrappedText message = new WrappedText(Palette.INK, Type.BODY);
        message.setText(finding.message());
        message.heightAt(WIDTH);
        WrappedText said = new WrappedText(Palette.SOFT, Type.SMALL);
        said.setText("Waived on " + date + ". It is listed apart and counts no longer.");
        said.heightAt(WIDTH);
        Form form = new Form().wide(message).add(reason).add(name).wide(said).end();
        form.setPreferredSize(new java.awt.Dimension(WIDTH, form.getPreferredSize().height));
        name.show(by);
        question =
                new Question(owner, "Waive: " + finding.check().replace('-', ' '), form, "Waive");
        reason.whileTyping(this::judge);
        name.whileTyping(this::judge);
        judge();
    }

    private void judge() {
        question.ready(!reason.value().isEmpty() && !name.value().isEmpty());
    }

    /** The waiver, or empty if it was cancelled. */
    Optional<Waiver> ask() {
        return question.ask()
                ? Optional.of(
                        new Waiver(
                                finding.check(),
                                finding.steps(),
                                finding.items(),
                                reason.value(),
                                name.value(),
                                date,
                                Extras.NONE))
                : Optional.empty();
    }
}
