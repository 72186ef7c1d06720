package counterstep.editor.details;

import counterstep.editor.form.ChoiceInput;
import counterstep.editor.form.EntryForm;
import counterstep.editor.form.Form;
import counterstep.editor.form.ListInput.Line;
import counterstep.editor.form.TextInput;
import counterstep.editor.form.TickInput;
import counterstep.model.Drive;
import counterstep.model.Extras;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;

/** The fields of a tool on the list. */
final class ToolForm implements EntryForm<Tool> {
    private final Form form = new Form();
    private final TextInput name;
    private final ChoiceInput<ToolKind> kind;
    private final DriveInput drive;
    private final TickInput inHand;
    private final TextInput note;
    private Optional<Tool> shown = Optional.empty();

    ToolForm(Runnable changed) {
        name = new TextInput("Name", changed);
        kind = new ChoiceInput<>("Kind", List.of(ToolKind.values()), ToolKind::word, changed);
        drive = new DriveInput(changed);
        inHand = new TickInput("held in the hand while used", changed);
        note = new TextInput("Note", changed).hint("torque setting");
        form.add(name).add(kind).add(drive.kind(), drive.size()).add(note).add(inHand);
    }

    /** A driver with no name yet. */
    static Tool fresh(ToolId id) {
        return new Tool(id, "", ToolKind.DRIVER, Optional.empty(), true, "", Extras.NONE);
    }

    static Line line(Tool tool) {
        String drive = tool.drive().map(Drive::label).orElse("");
        return new Line(
                tool.name().isEmpty() ? "no name yet" : tool.name(), Optional.empty(), drive);
    }

    @Override
    public JComponent component() {
        return form;
    }

    @Override
    public void show(Tool tool) {
        shown = Optional.of(tool);
        name.show(tool.name());
        kind.show(tool.kind());
        drive.show(tool.drive());
        inHand.show(tool.inHand());
        note.show(tool.note());
    }

    @Override
    public Tool read() {
        Tool old = shown.orElseThrow();
        return new Tool(
                old.id(),
                name.value(),
                kind.value(),
                drive.value(),
                inHand.value(),
                note.value(),
                old.extras());
    }
}
