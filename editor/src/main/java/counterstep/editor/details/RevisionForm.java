package counterstep.editor.details;

import counterstep.editor.form.EntryForm;
import counterstep.editor.form.Form;
import counterstep.editor.form.ListInput.Line;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.model.Extras;
import counterstep.model.Revision;
import java.util.Optional;
import javax.swing.JComponent;

/** The fields of an entry of the revision list. */
final class RevisionForm implements EntryForm<Revision> {
    private final Form form = new Form();
    private final TextInput number;
    private final TextInput date;
    private final TextInput author;
    private final TextBlock what;
    private Extras extras = Extras.NONE;

    RevisionForm(Runnable changed) {
        number = new TextInput("Number", changed);
        date = new TextInput("Date", changed).hint("2026-02-11");
        author = new TextInput("Author", changed);
        what = new TextBlock("What changed", 2, changed);
        form.add(number, date).add(author).add(what);
    }

    /** An entry with nothing written yet. */
    static Optional<Revision> fresh() {
        return Optional.of(new Revision("", "", "", "", Extras.NONE));
    }

    static Line line(Revision revision) {
        String number = revision.number().isEmpty() ? "no number" : revision.number();
        return new Line(number, Optional.empty(), revision.date());
    }

    @Override
    public JComponent component() {
        return form;
    }

    @Override
    public void show(Revision revision) {
        extras = revision.extras();
        number.show(revision.number());
        date.show(revision.date());
        author.show(revision.author());
        what.show(revision.changed());
    }

    @Override
    public Revision read() {
        return new Revision(number.value(), date.value(), author.value(), what.value(), extras);
    }
}
