package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.editor.start.Sample;
import counterstep.model.Procedure;
import counterstep.store.FileStamp;
import counterstep.store.Kept;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** New, open, save: what lies on the desk against what lies on the disk. */
final class DocumentWork {
    private static final String ENDING = ".procedure.json";

    private final Desk desk;
    private final Dialogs dialogs;
    private final Background background;
    private final Runnable handIn;
    private Optional<FileStamp> stamp = Optional.empty();
    private Optional<FileStamp> told = Optional.empty();
    private Runnable laid = () -> {};
    private Consumer<Path> refused = file -> {};

    /** {@code handIn} hands in what is being typed; it runs before the state is written. */
    DocumentWork(Desk desk, Dialogs dialogs, Background background, Runnable handIn) {
        this.desk = desk;
        this.dialogs = dialogs;
        this.background = background;
        this.handIn = handIn;
    }

    /** Tells whenever another document was laid on the desk. */
    void onLaid(Runnable listener) {
        laid = listener;
    }

    /** Tells which file could not be opened. */
    void onRefused(Consumer<Path> listener) {
        refused = listener;
    }

    /** An empty document that has no file yet. */
    static Procedure blank() {
        return Procedure.titled("procedure", "New procedure");
    }

    void startNew() {
        unlessUnsaved(() -> lay(() -> desk.opened(blank(), Optional.empty())));
    }

    /** Opens a copy of a sample, which has no file yet. */
    void openSample(Sample sample) {
        unlessUnsaved(
                () ->
                        background.run(
                                "Opening " + sample.title(),
                                stopped -> sample.procedure(),
                                copy -> lay(() -> desk.opened(copy, sample.photos())),
                                this::notOpened));
    }

    /** Lays a document on the desk that was made from what lies there; it has no file yet. */
    void openMade(Procedure made, PhotoFolder itsPhotos) {
        unlessUnsaved(() -> lay(() -> desk.opened(made, itsPhotos)));
    }

    void open() {
        unlessUnsaved(() -> dialogs.open(desk.state().file()).ifPresent(this::open));
    }

    /** Opens a file in place of what lies open; asks first if that would lose work. */
    void openInstead(Path file) {
        unlessUnsaved(() -> open(file));
    }

    /** Opens a file; what lies on the desk stays if that cannot be. */
    void open(Path file) {
        background.run(
                "Opening " + file.getFileName(),
                stopped -> new Read(FileStamp.of(file), ProcedureFile.read(file)),
                read -> {
                    lay(() -> desk.opened(read.procedure(), Optional.of(file)));
                    stamp = Optional.of(read.stamp());
                },
                sentence -> {
                    refused.accept(file);
                    notOpened(sentence);
                });
    }

    /** A document with the stamp its file had before it was read. */
    private record Read(FileStamp stamp, Procedure procedure) {}

    /**
     * Whether the file was written, and its stamp now; it is not where somebody else changed it.
     */
    private record Outcome(boolean written, FileStamp stamp) {}

    /** The file as this window last knew it; empty if it does not know, as while it writes. */
    Optional<FileStamp> stamp() {
        return stamp;
    }

    /** Whether a file was changed by another program, and the writer does not know it yet. */
    boolean isNews(FileStamp found) {
        return stamp.filter(known -> !known.equals(found)).isPresent()
                && !told.equals(Optional.of(found));
    }

    /** The file is known to differ from what lies open, which is unsaved from then on. */
    void setApart(FileStamp found) {
        stamp = Optional.of(found);
        desk.setApart();
    }

    private void lay(Runnable onTheDesk) {
        stamp = Optional.empty();
        onTheDesk.run();
        laid.run();
    }

    /** Lays on the desk what a window kept that was not closed properly; it is not saved. */
    void recover(Kept kept) {
        lay(() -> desk.recovered(kept.procedure(), kept.file(), kept.photos()));
    }

    private void notOpened(String sentence) {
        dialogs.tell("Not opened", sentence + " Nothing was opened.");
    }

    void save() {
        save(() -> {});
    }

    void saveAs() {
        handIn.run();
        saveAs(() -> {});
    }

    private void save(Runnable then) {
        handIn.run();
        Optional<Path> file = desk.state().file();
        if (file.isPresent()) {
            write(file.get(), then);
        } else {
            saveAs(then);
        }
    }

    private void saveAs(Runnable then) {
        DeskState state = desk.state();
        dialogs.save(state.file(), suggestion(state)).ifPresent(file -> write(file, then));
    }

    /** What files made of a state are called: as its own file, or after its title. */
    static String baseName(DeskState state) {
        return state.file()
                .map(ProcedureFile::baseName)
                .orElseGet(() -> plainName(state.procedure().titleBlock().title()));
    }

    private static String suggestion(DeskState state) {
        return state.file()
                .map(file -> file.getFileName().toString())
                .orElseGet(() -> plainName(state.procedure().titleBlock().title()) + ENDING);
    }

    private static String plainName(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "procedure" : plain;
    }

    /** Writes the file; asks first if another program changed it meanwhile. */
    private void write(Path file, Runnable then) {
        boolean elsewhere = !desk.state().file().equals(Optional.of(file));
        write(file, elsewhere ? Optional.empty() : stamp, elsewhere, then);
    }

    /** The state is immutable: it is written while the writer goes on. */
    private void write(Path file, Optional<FileStamp> known, boolean elsewhere, Runnable then) {
        DeskState state = desk.state();
        PhotoFolder source = desk.photos().folder();
        Optional<FileStamp> before = stamp;
        stamp = Optional.empty(); // and stays so if the user stops it: it may be written or not
        background.run(
                "Saving " + file.getFileName(),
                stopped -> {
                    FileStamp found = FileStamp.of(file);
                    if (known.filter(each -> found.there() && !each.equals(found)).isPresent()) {
                        return new Outcome(false, found); // gone is no work that could be lost
                    }
                    PhotoFolder.copy(state.procedure().photos(), source, file, elsewhere);
                    ProcedureFile.write(file, state.procedure());
                    return new Outcome(true, FileStamp.of(file));
                },
                outcome -> {
                    if (outcome.written()) {
                        written(state, file, outcome.stamp(), then);
                    } else {
                        stamp = known;
                        told = Optional.of(outcome.stamp());
                        askBeforeReplacing(file, then);
                    }
                },
                sentence -> {
                    stamp = before;
                    dialogs.tell(
                            "Not saved", sentence + " Your work is still open; save it elsewhere.");
                });
    }

    private void written(DeskState state, Path file, FileStamp newest, Runnable then) {
        stamp = Optional.of(newest);
        desk.photos().saved(state.procedure().photos(), file);
        desk.saved(state.generation(), file);
        then.run();
    }

    private void askBeforeReplacing(Path file, Runnable then) {
        switch (dialogs.replaceChanged(file.getFileName().toString())) {
            case REPLACE -> write(file, Optional.empty(), false, then);
            case SAVE_ELSEWHERE -> saveAs(then);
            case KEEP_OPEN -> {}
        }
    }

    /** Does something that closes what lies open; asks first if that would lose work. */
    void unlessUnsaved(Runnable next) {
        handIn.run();
        if (!desk.unsaved()) {
            next.run();
            return;
        }
        switch (dialogs.unsaved()) {
            case SAVE -> save(next);
            case DISCARD -> next.run();
            case KEEP_OPEN -> {}
        }
    }
}
