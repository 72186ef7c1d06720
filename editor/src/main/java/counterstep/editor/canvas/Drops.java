package counterstep.editor.canvas;

import counterstep.edit.AddStep;
import counterstep.edit.Edits;
import counterstep.editor.clipboard.CarriedSteps;
import counterstep.editor.desk.CarriedItem;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.excerpt.PutIn;
import counterstep.ledger.ActOnItem;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/**
 * Takes what is dropped onto the drawing: an item, which becomes an action of the step or a new
 * step; a block, which is put in below the step or, on the ground, at the end of its phase; and
 * photos. What is none of them goes to whatever the drawing stands in.
 */
final class Drops extends TransferHandler {
    private final transient Desk desk;
    private final transient StepCells cells;
    private final transient Viewpoint viewpoint;
    private final transient Feedback feedback;
    private transient Optional<PhotoDrop> photos = Optional.empty();

    Drops(Desk desk, StepCells cells, Viewpoint viewpoint, Feedback feedback) {
        this.desk = desk;
        this.cells = cells;
        this.viewpoint = viewpoint;
        this.feedback = feedback;
    }

    void install(JComponent control) {
        control.setTransferHandler(this);
        DroppedFiles.whenLeft(control, () -> feedback.aim(Optional.empty()));
    }

    void onPhotos(PhotoDrop taker) {
        photos = Optional.of(taker);
    }

    @Override
    public boolean canImport(TransferSupport support) {
        if (!support.isDrop()) {
            return false;
        }
        Optional<StepId> step = stepAt(support);
        boolean item = support.isDataFlavorSupported(CarriedItem.FLAVOR) && !onFolded(support);
        boolean photo =
                step.isPresent() && photos.isPresent() && DroppedFiles.perhapsPhotos(support);
        boolean block = support.isDataFlavorSupported(CarriedSteps.EXCERPT);
        if (!item && !block && !photo) {
            feedback.aim(Optional.empty());
            return elsewhere(support).filter(each -> each.canImport(support)).isPresent();
        }
        feedback.aim(step);
        if ((support.getSourceDropActions() & COPY) != 0) {
            support.setDropAction(COPY); // a move would let the other program delete the file
        }
        return (support.getSourceDropActions() & COPY) != 0;
    }

    @Override
    public boolean importData(TransferSupport support) {
        feedback.aim(Optional.empty());
        Optional<StepId> step = stepAt(support);
        try {
            if (support.isDataFlavorSupported(CarriedItem.FLAVOR)) {
                Object carried = support.getTransferable().getTransferData(CarriedItem.FLAVOR);
                return carried instanceof CarriedItem item && act(item.item(), step, at(support));
            }
            if (support.isDataFlavorSupported(CarriedSteps.EXCERPT)) {
                return CarriedSteps.in(support.getTransferable())
                        .map(block -> PutIn.block(block, step))
                        .filter(putIn -> desk.applyAndSelectNew(putIn).isEmpty())
                        .isPresent();
            }
            return step.isPresent() && photos.isPresent() && take(step.get(), support)
                    || elsewhere(support).filter(each -> each.importData(support)).isPresent();
        } catch (UnsupportedFlavorException | IOException gone) {
            return false;
        }
    }

    private boolean act(ItemId item, Optional<StepId> on, Point2D at) {
        AddStep fresh = NewStep.at(desk.state().procedure(), cells.scene(), at);
        StepId step = on.orElse(fresh.step().id());
        ActOnItem act = new ActOnItem(step, item);
        boolean done =
                desk.apply(on.isPresent() ? act : new Edits("Add step", List.of(fresh, act)))
                        .isEmpty();
        if (done) {
            desk.select(Selection.of(step));
        }
        return done;
    }

    private boolean take(StepId step, TransferSupport support)
            throws UnsupportedFlavorException, IOException {
        PhotoDrop taker = photos.orElseThrow();
        Transferable dropped = support.getTransferable();
        if (DroppedFiles.isFiles(support)) {
            DroppedFiles files = DroppedFiles.of(dropped);
            if (files.arePhotos()) {
                SwingUtilities.invokeLater(() -> taker.files(step, files.paths()));
            }
            return files.arePhotos();
        }
        if (support.isDataFlavorSupported(DataFlavor.imageFlavor)
                && dropped.getTransferData(DataFlavor.imageFlavor) instanceof Image image) {
            SwingUtilities.invokeLater(() -> taker.image(step, image));
            return true;
        }
        return false;
    }

    private Point2D at(TransferSupport support) {
        return viewpoint.toScene(support.getDropLocation().getDropPoint());
    }

    private Optional<StepId> stepAt(TransferSupport support) {
        return cells.scene().stepAt(at(support), 0);
    }

    /** Which of its steps should take the drop, a folded phase cannot tell. */
    private boolean onFolded(TransferSupport support) {
        return cells.scene().cardAt(at(support), 0).filter(Card::isFolded).isPresent();
    }

    /** What would take the drop if the drawing did not. */
    private static Optional<TransferHandler> elsewhere(TransferSupport support) {
        Component outer = support.getComponent().getParent();
        while (outer != null) {
            if (outer instanceof JComponent component && component.getTransferHandler() != null) {
                return Optional.of(component.getTransferHandler());
            }
            if (outer instanceof JFrame frame) {
                return Optional.ofNullable(frame.getTransferHandler());
            }
            outer = outer.getParent();
        }
        return Optional.empty();
    }
}
