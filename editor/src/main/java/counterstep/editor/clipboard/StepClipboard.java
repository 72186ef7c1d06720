package counterstep.editor.clipboard;

import counterstep.edit.DeleteSteps;
import counterstep.edit.Edit;
import counterstep.editor.desk.Desk;
import counterstep.excerpt.PutIn;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.shorthand.SeveralLines;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cuts, copies and pastes steps of what lies on the desk. */
public final class StepClipboard {
    private static final String NOTHING = "There are no steps and no text on the clipboard.";
    private static final String NO_STEP =
            "Files were copied. Select the one step that they are photos of, and paste again.";

    private final Desk desk;
    private final Clipboard clipboard;
    private final PhotoIntake photos;

    /**
     * Cuts and copies to a clipboard and pastes from it.
     *
     * @param clipboard the system's, as a rule
     * @param photos takes what is pasted and is neither steps nor text
     */
    public StepClipboard(Desk desk, Clipboard clipboard, PhotoIntake photos) {
        this.desk = desk;
        this.clipboard = clipboard;
        this.photos = photos;
    }

    /** Copies the selected steps; what lies on the clipboard stays where none is selected. */
    public void copy() {
        Set<StepId> steps = desk.state().selection().steps();
        if (!steps.isEmpty()) {
            CarriedSteps carried = CarriedSteps.of(desk.state().procedure(), steps);
            clipboard.setContents(carried, (board, lost) -> {});
        }
    }

    /** Copies the selected steps and deletes them. */
    public void cut() {
        Set<StepId> steps = desk.state().selection().steps();
        if (!steps.isEmpty()) {
            copy();
            desk.apply(new DeleteSteps(steps));
        }
    }

    /**
     * Puts what lies on the clipboard below the selected step, or at the end, and selects it: steps
     * with what they name; of other text each line as the quick line would read it. A copied photo
     * is added to the selected step; so are files, whose names a file window offers as text too.
     *
     * @return the sentence that says why nothing was pasted; empty if something was
     */
    public Optional<String> paste() {
        Transferable contents =
                clipboard.getContents(null); // the argument is unused, says its page
        if (contents == null) {
            return Optional.of(NOTHING);
        }
        boolean files = contents.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        if ((files || edit(contents).isEmpty()) && isPhotoOfSelected(contents)) {
            return Optional.empty();
        }
        return files ? Optional.of(NO_STEP) : paste(contents);
    }

    /** Puts something that is dropped or pasted below the selected step, or at the end. */
    public Optional<String> paste(Transferable carried) {
        return edit(carried).map(desk::applyAndSelectNew).orElse(Optional.of(NOTHING));
    }

    /** Adds a photo to the selected step, if one is selected. */
    private boolean isPhotoOfSelected(Transferable carried) {
        return desk.state()
                .selection()
                .onlyStep()
                .filter(step -> photos.add(carried, step))
                .isPresent();
    }

    private Optional<Edit> edit(Transferable carried) {
        Optional<StepId> below = last(desk.state().selection().steps());
        Optional<Procedure> excerpt = CarriedSteps.in(carried);
        if (excerpt.isPresent()) {
            int count = excerpt.get().steps().size();
            String name = count == 1 ? "Paste step" : "Paste " + count + " steps";
            return Optional.of(new PutIn(excerpt.get(), below, false, name));
        }
        return SeveralLines.read(desk.state().procedure(), below, text(carried));
    }

    private static Optional<StepId> last(Set<StepId> steps) {
        return List.copyOf(steps).stream().reduce((one, other) -> other);
    }

    private static String text(Transferable carried) {
        if (!carried.isDataFlavorSupported(DataFlavor.stringFlavor)) {
            return "";
        }
        try {
            return (String) carried.getTransferData(DataFlavor.stringFlavor);
        } catch (IOException | UnsupportedFlavorException gone) {
            return "";
        }
    }
}
