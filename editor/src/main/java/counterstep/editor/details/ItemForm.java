package counterstep.editor.details;

import counterstep.editor.form.Form;
import counterstep.editor.form.Formats;
import counterstep.editor.form.ParsedInput;
import counterstep.editor.form.TextBlock;
import counterstep.editor.form.TextInput;
import counterstep.model.Item;
import counterstep.model.Procedure;
import javax.swing.JComponent;

/**
 * The fields of one kind of item.
 *
 * @param <I> the kind
 */
abstract class ItemForm<I extends Item> {
    final TextInput name;
    final ParsedInput<Integer> quantity;
    final TextBlock note;
    private final Form form = new Form();
    private I shown;

    /** The common fields; {@code changed} runs at each change of any. */
    ItemForm(I first, Runnable changed) {
        shown = first;
        name = new TextInput("Name", changed).named("item.name");
        quantity = new ParsedInput<>("Count", Formats.COUNT, 1, changed).named("item.count");
        note = new TextBlock("Note", 2, changed);
    }

    /** Lays the fields of this kind between the common ones. */
    final ItemForm<I> laid() {
        form.add(name);
        lay(form);
        form.add(note).end();
        return this;
    }

    final JComponent component() {
        return form;
    }

    private void show(I item, Procedure procedure) {
        shown = item;
        name.show(item.name());
        quantity.show(item.quantity());
        note.show(item.note());
        fill(item, procedure);
    }

    /** Shows an item that must be of this form's kind. */
    @SuppressWarnings("unchecked") // cast to the class of an item of this kind
    final void showSame(Item item, Procedure procedure) {
        show((I) shown.getClass().cast(item), procedure);
    }

    /** The item as last shown: what the fields do not hold comes from it. */
    final I shown() {
        return shown;
    }

    /** Adds the fields of this kind. */
    abstract void lay(Form target);

    /** Shows what is of this kind alone. */
    abstract void fill(I item, Procedure procedure);

    /** The item as the fields say. */
    abstract I read();
}
