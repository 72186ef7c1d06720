package counterstep.editor.clipboard;

import counterstep.excerpt.Excerpt;
import counterstep.excerpt.PlainSteps;
import counterstep.input.BadInput;
import counterstep.input.Limits;
import counterstep.json.ProcedureReader;
import counterstep.json.ProcedureWriter;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.Set;

/** Steps on their way from one place to another: an excerpt of their document, and plain text. */
public final class CarriedSteps implements Transferable {
    /** An excerpt as the bytes of a document, so that it reaches the window of another process. */
    public static final DataFlavor EXCERPT =
            new DataFlavor(
                    "application/vnd.counterstep.excerpt+json;class=java.io.InputStream",
                    "steps of a procedure");

    private final byte[] excerpt;
    private final String text;

    private CarriedSteps(byte[] excerpt, String text) {
        this.excerpt = excerpt;
        this.text = text;
    }

    /** Steps out of a document. */
    public static CarriedSteps of(Procedure whole, Set<StepId> steps) {
        Procedure excerpt = Excerpt.of(whole, steps);
        return new CarriedSteps(ProcedureWriter.write(excerpt), PlainSteps.of(excerpt, whole));
    }

    /** A block, which may hold no step at all. */
    public static CarriedSteps of(Procedure block) {
        return new CarriedSteps(ProcedureWriter.write(block), PlainSteps.of(block, block));
    }

    /**
     * The excerpt that something carries.
     *
     * @return empty if it carries none, or none that can be read
     */
    public static Optional<Procedure> in(Transferable carried) {
        if (!carried.isDataFlavorSupported(EXCERPT)) {
            return Optional.empty();
        }
        try (InputStream in = (InputStream) carried.getTransferData(EXCERPT)) {
            return Optional.of(ProcedureReader.read(in.readNBytes(Limits.FILE_BYTES)));
        } catch (IOException | UnsupportedFlavorException | BadInput unreadable) {
            return Optional.empty();
        }
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {EXCERPT, DataFlavor.stringFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return flavor.equals(EXCERPT) || flavor.equals(DataFlavor.stringFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
        if (flavor.equals(EXCERPT)) {
            return new ByteArrayInputStream(excerpt);
        }
        if (flavor.equals(DataFlavor.stringFlavor)) {
            return text;
        }
        throw new UnsupportedFlavorException(flavor);
    }
}
