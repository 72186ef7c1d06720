package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.model.ClipSet;
import counterstep.model.Procedure;

/** The fields of a clip set. */
final class ClipsForm extends ItemForm<ClipSet> {
    ClipsForm(ClipSet first, Runnable changed) {
        super(first, changed);
    }

    @Override
    void lay(Form target) {
        target.add(quantity);
    }

    @Override
    void fill(ClipSet clips, Procedure procedure) {
        // the common fields are all it has
    }

    @Override
    ClipSet read() {
        return new ClipSet(
                shown().id(), name.value(), quantity.value(), note.value(), shown().extras());
    }
}
