package counterstep.editor.window;

import counterstep.editor.canvas.StepGraph;
import counterstep.editor.desk.Desk;
import counterstep.editor.theme.Theme;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/** What can be done from the menu, by key and from the bar: the key table of the window. */
final class Commands {
    /** One command, with the menu it stands in. */
    record Entry(String menu, Action action) {
        String name() {
            return (String) action.getValue(Action.NAME);
        }

        KeyStroke key() {
            return (KeyStroke) action.getValue(Action.ACCELERATOR_KEY);
        }
    }

    private final List<Entry> entries = new ArrayList<>();
    private final Action undo;
    private final Action redo;
    private final Action export;

    Commands(
            Desk desk,
            StepGraph graph,
            DocumentWork documents,
            ExportWork exports,
            Runnable quit,
            Runnable keys) {
        add("File", "New", "ctrl N", documents::startNew);
        add("File", "Open…", "ctrl O", documents::open);
        add("File", "Save", "ctrl S", documents::save);
        add("File", "Save as…", "ctrl shift S", documents::saveAs);
        export = add("File", "Export guide…", "ctrl E", exports::export);
        add("File", "Close", "ctrl Q", quit);
        undo = add("Edit", "Undo", "ctrl Z", desk::undo);
        redo = add("Edit", "Redo", "ctrl Y", desk::redo);
        add("Edit", "Rename step", "F2", graph::renameSelected);
        add("Edit", "Delete", "ctrl DELETE", graph::deleteSelected);
        add("Edit", "Select all steps", "ctrl shift A", graph::selectAll);
        add("Draw", "Add step", "ctrl ENTER", graph::addStep);
        add("Draw", "Back to the mirror layout", "ctrl M", graph::returnToMirror);
        add("Window", "Fit width", "ctrl 9", graph::fitWidth);
        add("Window", "Actual size", "ctrl 0", graph::zoomActual);
        add("Window", "Larger", "ctrl EQUALS", () -> graph.zoomBy(1.2));
        add("Window", "Smaller", "ctrl MINUS", () -> graph.zoomBy(1 / 1.2));
        add("Window", "Light or dark", "ctrl D", () -> Theme.current().other().show());
        add("Help", "Keys", "F1", keys);
        desk.onState(state -> describe(desk::undoName, desk::redoName));
    }

    private Action add(String menu, String name, String key, Runnable act) {
        Action action =
                new AbstractAction(name) {
                    @Override
                    public void actionPerformed(ActionEvent event) {
                        act.run();
                    }
                };
        action.putValue(Action.ACCELERATOR_KEY, KeyStroke.getKeyStroke(key));
        entries.add(new Entry(menu, action));
        return action;
    }

    private void describe(
            Supplier<java.util.Optional<String>> undoName,
            Supplier<java.util.Optional<String>> redoName) {
        name(undo, "Undo", undoName.get());
        name(redo, "Redo", redoName.get());
    }

    private static void name(Action action, String verb, java.util.Optional<String> edit) {
        action.setEnabled(edit.isPresent());
        action.putValue(Action.NAME, edit.map(name -> verb + ": " + name).orElse(verb));
    }

    List<Entry> entries() {
        return List.copyOf(entries);
    }

    Action undo() {
        return undo;
    }

    Action redo() {
        return redo;
    }

    Action export() {
        return export;
    }
}
