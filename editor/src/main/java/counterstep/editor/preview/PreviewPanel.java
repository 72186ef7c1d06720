package counterstep.editor.preview;

import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.HandIn;
import counterstep.export.Print;
import counterstep.model.StepId;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletionStage;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * The guide as it will print, following the selected step and refreshed some moments after an edit.
 * Costs nothing until it is first seen, and nothing while it is hidden.
 */
public final class PreviewPanel implements DeskPanel {
    private static final int PAUSE_MILLISECONDS = 300;

    private final Desk desk;
    private final Supplier<CompletionStage<Void>> toolkit;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final PreviewPages pages = new PreviewPages();
    private final Notice notice = new Notice();
    private final PageButtons buttons = new PageButtons(this::print, this::openInBrowser);
    private final PageMaker maker = new PageMaker();
    private final BrowserCopy copy;
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private final Timer pause = new Timer(PAUSE_MILLISECONDS, event -> make());
    private boolean asked;
    private boolean printWanted;
    private Optional<GuideView> view = Optional.empty();
    private Optional<Analysis> shown = Optional.empty();

    /** The preview of what lies on a desk. */
    public PreviewPanel(Desk desk) {
        this(desk, WebToolkit::start, new DesktopBrowser());
    }

    /**
     * A preview.
     *
     * @param toolkit starts JavaFX; fails where it cannot be loaded
     */
    PreviewPanel(Desk desk, Supplier<CompletionStage<Void>> toolkit, Browser browser) {
        this.desk = desk;
        this.toolkit = toolkit;
        copy = new BrowserCopy(browser, notice::tell);
        pause.setRepeats(false);
        pages.onBrowser(this::openInBrowser);
        notice.onBrowser(this::openInBrowser);
        panel.add(notice, BorderLayout.NORTH);
        panel.add(pages, BorderLayout.CENTER);
        desk.onState(state -> whileShown.changed());
        desk.onAnalysis(analysis -> whileShown.changed());
    }

    @Override
    public String title() {
        return "Preview";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> tabControls() {
        return Optional.of(buttons);
    }

    /** Prints the guide as it is now, as soon as the page is there; the panel has to be shown. */
    public void print() {
        HandIn.focused();
        printWanted = true;
        printIfShown();
    }

    private void render() {
        if (!asked) {
            asked = true;
            toolkit.get()
                    .whenComplete(
                            (up, failure) ->
                                    SwingUtilities.invokeLater(
                                            () -> started(Optional.ofNullable(failure))));
        }
        if (view.isEmpty()) {
            return;
        }
        if (newer().isEmpty()) {
            view.get().follow(followed());
        } else if (shown.isEmpty()) {
            make();
        } else {
            pause.restart();
        }
    }

    /** The toolkit runs, or cannot. */
    private void started(Optional<Throwable> failure) {
        if (failure.isEmpty()) {
            try {
                GuideView made = new GuideView();
                made.onStep(this::select);
                made.onLink(copy::follow);
                view = Optional.of(made);
                made.onLoaded(pages::showPage);
                pages.take(made.component());
                whileShown.changed();
                return;
            } catch (UnsupportedOperationException | LinkageError notHere) {
                failure = Optional.of(notHere);
            }
        }
        pages.tell(Unavailable.sentence(failure.get()));
        printIfShown();
    }

    /** The analysis of what lies open, if it is there and not the one that is shown. */
    private Optional<Analysis> newer() {
        return desk.analysis()
                .filter(analysis -> analysis.generation() == desk.state().generation())
                .filter(
                        analysis ->
                                shown.filter(old -> old.generation() == analysis.generation())
                                        .isEmpty());
    }

    private void make() {
        if (!panel.isShowing()) {
            whileShown.changed();
            return;
        }
        newer().ifPresent(
                        analysis ->
                                maker.make(
                                        analysis,
                                        desk.photos().folder(),
                                        page -> show(analysis, page)));
    }

    private void show(Analysis analysis, String page) {
        shown = Optional.of(analysis);
        view.ifPresent(made -> made.show(page, followed()));
        printIfShown();
    }

    private OptionalInt followed() {
        List<StepId> selected = List.copyOf(desk.state().selection().steps());
        if (selected.isEmpty() || shown.isEmpty()) {
            return OptionalInt.empty();
        }
        StepId last = selected.get(selected.size() - 1);
        return shown.get()
                .index()
                .findStep(last)
                .map(step -> OptionalInt.of(shown.get().index().number(last)))
                .orElseGet(OptionalInt::empty);
    }

    private void select(int number) {
        shown.map(analysis -> analysis.procedure().steps())
                .filter(steps -> number >= 1 && number <= steps.size())
                .ifPresent(steps -> desk.select(Selection.of(steps.get(number - 1).id())));
    }

    private void printIfShown() {
        if (!printWanted) {
            return;
        }
        if (pages.unavailable()) {
            printWanted = false;
            notice.tell("The preview cannot print here; the browser can.", true);
        } else if (view.isPresent() && shown.isPresent() && newer().isEmpty()) {
            printWanted = false;
            view.get()
                    .print(hindered -> hindered.ifPresent(sentence -> notice.tell(sentence, true)));
        }
    }

    private void openInBrowser() {
        HandIn.focused();
        DeskState state = desk.state();
        PhotoFolder itsPhotos = desk.photos().folder();
        maker.after(() -> copy.open(Print.of(baseName(state), state.procedure(), itsPhotos)));
    }

    private static String baseName(DeskState state) {
        return state.file().map(ProcedureFile::baseName).orElse("procedure");
    }
}
