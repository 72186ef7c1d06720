package counterstep.editor.details;

import counterstep.editor.form.EntryForm;
import counterstep.editor.form.Form;
import counterstep.editor.form.ListInput.Line;
import counterstep.editor.form.TextInput;
import counterstep.model.Supply;
import java.util.Optional;
import javax.swing.JComponent;

/** The fields of a supply. */
final class SupplyForm implements EntryForm<Supply> {
    private final Form form = new Form();
    private final TextInput name;
    private final TextInput amount;
    private final TextInput note;
    private Optional<Supply> shown = Optional.empty();

    SupplyForm(Runnable changed) {
        name = new TextInput("Name", changed);
        amount = new TextInput("Amount", changed).hint("120 mm");
        note = new TextInput("Note", changed);
        form.add(name).add(amount, note);
    }

    static Line line(Supply supply) {
        String name = supply.name().isEmpty() ? "no name yet" : supply.name();
        return new Line(name, Optional.empty(), supply.amount());
    }

    @Override
    public JComponent component() {
        return form;
    }

    @Override
    public void show(Supply supply) {
        shown = Optional.of(supply);
        name.show(supply.name());
        amount.show(supply.amount());
        note.show(supply.note());
    }

    @Override
    public Supply read() {
        Supply old = shown.orElseThrow();
        return new Supply(old.id(), name.value(), amount.value(), note.value(), old.extras());
    }
}
