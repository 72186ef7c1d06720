package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.Form;
import counterstep.model.Procedure;
import counterstep.model.Tie;
import counterstep.model.TieKind;
import java.util.List;

/** The fields of a one-way tie. */
final class TieForm extends ItemForm<Tie> {
    private final ChoiceInput<TieKind> kind;

    TieForm(Tie first, Runnable changed) {
        super(first, changed);
        kind = new ChoiceInput<>("Kind", List.of(TieKind.values()), TieKind::word, changed);
    }

    @Override
    void lay(Form target) {
        target.add(quantity, kind);
    }

    @Override
    void fill(Tie tie, Procedure procedure) {
        kind.show(tie.kind());
    }

    @Override
    Tie read() {
        return new Tie(
                shown().id(),
                name.value(),
                quantity.value(),
                kind.value(),
                note.value(),
                shown().extras());
    }
}
