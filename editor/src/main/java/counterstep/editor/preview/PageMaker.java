package counterstep.editor.preview;

import counterstep.editor.analysis.Analysis;
import counterstep.export.Choices;
import counterstep.export.Print;
import counterstep.export.html.HtmlGuide;
import counterstep.export.picture.Pictures;
import counterstep.json.Fingerprint;
import counterstep.mirror.Pairing;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.store.PhotoFolder;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Sets guides as pages, on a thread of its own; a page that a newer one overtakes is never told.
 */
final class PageMaker {
    /** Photos once prepared, for as long as they are the same. */
    private record Prepared(PhotoFolder folder, List<Photo> photos, Pictures pictures) {}

    private static final int WIDTH = Choices.USUAL.photoWidth();

    private final Executor worker = Executors.newSingleThreadExecutor(PageMaker::daemon);
    private final AtomicLong newest = new AtomicLong();
    private Prepared prepared = new Prepared(PhotoFolder.none(), List.of(), none());

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "preview pages");
        thread.setDaemon(true);
        return thread;
    }

    private static Pictures none() {
        return Pictures.in(PhotoFolder.none(), WIDTH);
    }

    /** Makes the page of an analysed document; told on the event thread. */
    void make(Analysis analysis, PhotoFolder photos, Consumer<String> told) {
        long wanted = newest.incrementAndGet();
        worker.execute(
                () -> {
                    if (wanted == newest.get()) {
                        String page = HtmlGuide.page(print(analysis, photos));
                        SwingUtilities.invokeLater(
                                () -> {
                                    if (wanted == newest.get()) {
                                        told.accept(page);
                                    }
                                });
                    }
                });
    }

    /** Does something when the pages asked for so far are made, on the thread that makes them. */
    void after(Runnable work) {
        worker.execute(work);
    }

    private Print print(Analysis analysis, PhotoFolder photos) {
        Procedure procedure = analysis.procedure();
        return new Print(
                "",
                analysis.facts(),
                analysis.review(),
                analysis.tooling(),
                analysis.toolChanges(),
                Pairing.of(procedure),
                analysis.criticalPath(),
                Fingerprint.of(procedure),
                pictures(photos, procedure.photos()),
                Choices.USUAL);
    }

    private Pictures pictures(PhotoFolder folder, List<Photo> photos) {
        if (!folder.equals(prepared.folder()) || !photos.equals(prepared.photos())) {
            prepared = new Prepared(folder, photos, Pictures.in(folder, WIDTH));
        }
        return prepared.pictures();
    }
}
