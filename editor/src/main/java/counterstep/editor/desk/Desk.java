package counterstep.editor.desk;

import counterstep.edit.Edit;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.analysis.Analyst;
import counterstep.find.StepNumbers;
import counterstep.handbook.WorkTimes;
import counterstep.implied.ImpliedLink;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.PhotoFolder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.SwingUtilities;

/**
 * The one holder of what is open in a window. Used on the event thread only: every method refuses
 * another thread with {@link IllegalStateException}.
 */
public final class Desk {
    private final Analyst analyst;
    private final History history = new History();
    private final PhotoStock photos = new PhotoStock();
    private final List<Consumer<DeskState>> stateListeners = new ArrayList<>();
    private final List<Consumer<Analysis>> analysisListeners = new ArrayList<>();
    private DeskState state;
    private Optional<Analysis> analysis = Optional.empty();
    private Optional<Procedure> saved;

    /**
     * A desk with a document that has no file yet.
     *
     * @param procedure what lies open
     * @param analyst examines it, and each one that follows
     */
    public Desk(Procedure procedure, Analyst analyst) {
        requireEventThread();
        this.analyst = analyst;
        this.state = new DeskState(procedure, Selection.NONE, Optional.empty(), 1);
        this.saved = Optional.of(procedure);
        analyst.onResult(this::analysed);
        analyst.examine(procedure, state.generation());
    }

    /** A desk with an analyst on a thread of its own. */
    public static Desk of(Procedure procedure) {
        return new Desk(procedure, Analyst.onOwnThreads());
    }

    /** What lies open now. */
    public DeskState state() {
        requireEventThread();
        return state;
    }

    /** The photos of what lies open, saved or not. */
    public PhotoStock photos() {
        requireEventThread();
        return photos;
    }

    /** The newest analysis, marked if it is being renewed; empty before the first. */
    public Optional<Analysis> analysis() {
        requireEventThread();
        return analysis;
    }

    /**
     * Changes the document. An edit that changes nothing leaves no trace. Numbers of steps in texts
     * follow the steps that they name.
     *
     * @return empty if done; else the sentence that says why the edit has no meaning here, and all
     *     is as before
     */
    public Optional<String> apply(Edit edit) {
        requireEventThread();
        Procedure before = state.procedure();
        Procedure after;
        try {
            after = StepNumbers.follow(before, edit.apply(before));
        } catch (IllegalArgumentException refused) {
            return Optional.of(String.valueOf(refused.getMessage()));
        }
        if (!after.equals(before)) {
            history.record(edit.name(), before);
            show(after);
        }
        return Optional.empty();
    }

    /** Changes the document as {@link #apply} does, and selects the steps that are new in it. */
    public Optional<String> applyAndSelectNew(Edit edit) {
        Set<StepId> old = ids(state().procedure());
        Optional<String> refused = apply(edit);
        Set<StepId> made = new LinkedHashSet<>(ids(state.procedure()));
        made.removeAll(old);
        if (!made.isEmpty()) {
            select(Selection.ofSteps(made));
        }
        return refused;
    }

    private static Set<StepId> ids(Procedure procedure) {
        return procedure.steps().stream()
                .map(Step::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Brings back the document before the last edit, if there is one. */
    public void undo() {
        requireEventThread();
        history.undo(state.procedure()).ifPresent(this::show);
    }

    /** Brings back the document that the last undo left, if there is one. */
    public void redo() {
        requireEventThread();
        history.redo(state.procedure()).ifPresent(this::show);
    }

    /** Name of the edit that undo would take back. */
    public Optional<String> undoName() {
        requireEventThread();
        return history.undoName();
    }

    /** Name of the edit that redo would do again. */
    public Optional<String> redoName() {
        requireEventThread();
        return history.redoName();
    }

    /** Selects; what is not in the document is left out. Raises no generation. */
    public void select(Selection selection) {
        requireEventThread();
        Selection within = selection.within(state.procedure(), proposed(state.procedure()));
        if (!within.equals(state.selection())) {
            replace(new DeskState(state.procedure(), within, state.file(), state.generation()));
        }
    }

    /** Lays another document on the desk, with no history; it counts as saved. */
    public void opened(Procedure procedure, Optional<Path> file) {
        PhotoFolder beside = file.map(PhotoFolder::beside).orElseGet(PhotoFolder::none);
        opened(procedure, file, beside);
    }

    /** Lays a document on the desk that has no file yet, but photos. */
    public void opened(Procedure procedure, PhotoFolder itsPhotos) {
        opened(procedure, Optional.empty(), itsPhotos);
    }

    private void opened(Procedure procedure, Optional<Path> file, PhotoFolder itsPhotos) {
        requireEventThread();
        photos.lay(itsPhotos, file.isPresent());
        history.clear();
        saved = Optional.of(procedure);
        begin(new DeskState(procedure, Selection.NONE, file, state.generation() + 1));
    }

    /**
     * Lays a document on the desk, with no history, that is not safe in a file as it is.
     *
     * @param procedure the document
     * @param file its file, if it has one
     * @param kept those of its photos that do not lie beside that file
     */
    public void recovered(Procedure procedure, Optional<Path> file, PhotoFolder kept) {
        requireEventThread();
        photos.lay(file.map(PhotoFolder::beside).orElseGet(PhotoFolder::none), file.isPresent());
        photos.takeBack(procedure.photos(), kept);
        history.clear();
        saved = Optional.empty();
        begin(new DeskState(procedure, Selection.NONE, file, state.generation() + 1));
    }

    /**
     * The document of a generation is safe in a file. What was changed meanwhile stays unsaved.
     *
     * @param generation of the state that was written
     * @param file where it was written
     */
    public void saved(long generation, Path file) {
        requireEventThread();
        saved = Optional.of(state.procedure()).filter(open -> generation == state.generation());
        replace(
                new DeskState(
                        state.procedure(),
                        state.selection(),
                        Optional.of(file),
                        state.generation()));
    }

    /** What lies open is safe in no file any longer; its history stays. */
    public void setApart() {
        requireEventThread();
        saved = Optional.empty();
        replace(state);
    }

    /** Whether closing would lose work. */
    @SuppressWarnings("ReferenceEquality") // the very document that was saved, not one like it
    public boolean unsaved() {
        requireEventThread();
        return saved.filter(kept -> kept == state.procedure()).isEmpty();
    }

    /** Tells a listener the state, now and whenever it changes. */
    public void onState(Consumer<DeskState> listener) {
        requireEventThread();
        stateListeners.add(listener);
        listener.accept(state);
    }

    /**
     * Tells a listener the analysis: now if there is one, whenever a newer one is there, and when
     * the last one begins to be renewed.
     */
    public void onAnalysis(Consumer<Analysis> listener) {
        requireEventThread();
        analysisListeners.add(listener);
        analysis.ifPresent(listener);
    }

    /** Tells a listener, once, in a sentence, that an analysis failed. */
    public void onTrouble(Consumer<String> listener) {
        requireEventThread();
        analyst.onTrouble(listener);
    }

    /** Estimates times by these figures from now on. */
    public void estimateBy(WorkTimes figures) {
        requireEventThread();
        analyst.estimateBy(figures);
        show(state.procedure());
    }

    private Set<LinkEnds> proposed(Procedure procedure) {
        Set<StepId> steps = ids(procedure);
        return analysis.stream()
                .flatMap(newest -> newest.implied().proposals().stream())
                .map(ImpliedLink::ends)
                .filter(ends -> steps.contains(ends.before()) && steps.contains(ends.after()))
                .collect(Collectors.toUnmodifiableSet());
    }

    private void show(Procedure procedure) {
        begin(
                new DeskState(
                        procedure,
                        state.selection().within(procedure, proposed(procedure)),
                        state.file(),
                        state.generation() + 1));
    }

    @SuppressWarnings("ReferenceEquality") // a listener may have put a newer state in its place
    private void begin(DeskState next) {
        replace(next);
        if (state == next) {
            analysis.map(Analysis::beingRenewed).ifPresent(this::tell);
            analyst.examine(next.procedure(), next.generation());
        }
    }

    @SuppressWarnings("ReferenceEquality") // a listener may have put a newer state in its place
    private void replace(DeskState next) {
        state = next;
        for (Consumer<DeskState> listener : List.copyOf(stateListeners)) {
            if (state != next) {
                return; // a listener changed it; everyone has been told the newer state
            }
            listener.accept(next);
        }
    }

    private void analysed(Analysis result) {
        requireEventThread();
        if (result.generation() == state.generation()) {
            tell(result);
            select(state.selection()); // what is proposed no more cannot stay selected
        }
    }

    private void tell(Analysis next) {
        analysis = Optional.of(next);
        List.copyOf(analysisListeners).forEach(listener -> listener.accept(next));
    }

    private static void requireEventThread() {
        if (!SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException("the desk is used on the event thread only");
        }
    }
}
