package counterstep.editor.window;

import counterstep.store.Kept;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;

/** Offers, at the start, what a window kept that was not closed properly. */
final class Recovery {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                    .withLocale(Locale.UK);

    private final DocumentWork documents;
    private final Dialogs dialogs;
    private final Background background;
    private final Autosave autosave;
    private final ZoneId zone;

    Recovery(
            DocumentWork documents,
            Dialogs dialogs,
            Background background,
            Autosave autosave,
            ZoneId zone) {
        this.documents = documents;
        this.dialogs = dialogs;
        this.background = background;
        this.autosave = autosave;
        this.zone = zone;
    }

    /** Looks into the folder, asks, and goes on with something else if nothing is opened. */
    void offer(Path folder, Runnable otherwise) {
        background.run(
                "Looking for kept work",
                stopped -> Kept.in(folder),
                left -> ask(left, otherwise),
                sentence -> {
                    dialogs.tell("Kept work", sentence);
                    otherwise.run();
                });
    }

    private void ask(List<Kept> left, Runnable otherwise) {
        boolean opened = false;
        for (Kept work : left) {
            if (opened) {
                autosave.leave(work);
                continue;
            }
            switch (dialogs.kept(work.procedure().titleBlock().title(), when(work))) {
                case OPEN -> {
                    autosave.goOn(work);
                    documents.recover(work);
                    opened = true;
                }
                case DISCARD -> autosave.discard(work);
                case LATER -> autosave.leave(work);
            }
        }
        if (!opened) {
            otherwise.run();
        }
    }

    private String when(Kept work) {
        return work.when().atZone(zone).format(WHEN);
    }
}
