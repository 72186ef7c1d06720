package counterstep.editor.clipboard;

import counterstep.editor.form.KeyPress;
import counterstep.model.StepId;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Takes photos that are dropped onto a component, or pasted there, for the step it is about. */
public final class PhotoTransfer extends TransferHandler {
    private final transient PhotoIntake intake;
    private final transient Supplier<Optional<StepId>> step;

    private PhotoTransfer(PhotoIntake intake, Supplier<Optional<StepId>> step) {
        this.intake = intake;
        this.step = step;
    }

    /**
     * From now on the component takes photos.
     *
     * @param step asked when one comes; what comes for none is left where it is
     */
    public static void onto(
            JComponent component, PhotoIntake intake, Supplier<Optional<StepId>> step) {
        PhotoTransfer transfer = new PhotoTransfer(intake, step);
        component.setTransferHandler(transfer);
        KeyPress.within(component, "ctrl V", () -> transfer.paste(component));
    }

    private void paste(JComponent into) {
        Transferable contents = into.getToolkit().getSystemClipboard().getContents(null);
        if (contents != null) {
            step.get().ifPresent(id -> intake.add(contents, id));
        }
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return step.get().isPresent()
                && (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                        || support.isDataFlavorSupported(DataFlavor.imageFlavor));
    }

    @Override
    public boolean importData(TransferSupport support) {
        return canImport(support)
                && intake.add(support.getTransferable(), step.get().orElseThrow());
    }
}
