package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.store.FileStamp;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;

/** Notices, when the writer comes back to the window, that another program changed the file. */
final class ChangedElsewhere {
    private final Desk desk;
    private final DocumentWork documents;
    private final Dialogs dialogs;
    private final Background background;

    ChangedElsewhere(Desk desk, DocumentWork documents, Dialogs dialogs, Background background) {
        this.desk = desk;
        this.documents = documents;
        this.dialogs = dialogs;
        this.background = background;
    }

    /** Looks whenever a window is come back to. */
    void watch(Window window) {
        window.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowActivated(WindowEvent event) {
                        desk.state().file().ifPresent(ChangedElsewhere.this::look);
                    }
                });
    }

    private void look(Path file) {
        Optional<FileStamp> known = documents.stamp();
        if (known.isEmpty()) {
            return; // what was never read or written by this window cannot have changed since
        }
        background.run(
                "Looking at " + file.getFileName(),
                stopped -> FileStamp.of(file),
                found -> {
                    if (documents.stamp().equals(known) && documents.isNews(found)) {
                        ask(file, found);
                    }
                },
                sentence -> {}); // what the disk refuses is told on saving, where it matters
    }

    private void ask(Path file, FileStamp found) {
        boolean losesWork = desk.unsaved();
        documents.setApart(found);
        String name = file.getFileName().toString();
        if (!found.there()) {
            dialogs.say("File gone", name + " is no longer there. Your work is still open.");
        } else if (dialogs.openChanged(name, losesWork)) {
            documents.open(file);
        }
    }
}
