package counterstep.editor.preview;

import java.util.Optional;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.web.WebEngine;

/** Prints a page on a printer that the user chooses. */
final class Printing {
    private static final String NO_PRINTER =
            "There is no printer that the preview can print on. The browser can print the guide"
                    + " too, or write it as PDF.";

    private Printing() {}

    /**
     * Asks for the printer and prints.
     *
     * @return why nothing was printed; empty where it was, or the user thought better of it
     */
    static Optional<String> of(WebEngine engine) {
        if (Printer.getDefaultPrinter() == null && Printer.getAllPrinters().isEmpty()) {
            return Optional.of(NO_PRINTER);
        }
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) {
            return Optional.of(NO_PRINTER);
        }
        if (!job.showPrintDialog(null)) {
            job.cancelJob();
            return Optional.empty();
        }
        engine.print(job);
        return job.endJob()
                ? Optional.empty()
                : Optional.of("The printer did not take the guide; it may be off or out of reach.");
    }
}
