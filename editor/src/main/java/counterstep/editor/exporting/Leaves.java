package counterstep.editor.exporting;

import counterstep.export.Choices;
import counterstep.export.Exporter;
import counterstep.export.Print;
import counterstep.export.pdf.PdfGuide;
import counterstep.export.pdf.PdfPictures;
import counterstep.input.BadInput;
import counterstep.store.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.SwingUtilities;

/**
 * Makes what an export would write, in memory, and sets it for the screen; off the event thread.
 * What a newer wish overtakes is given up.
 */
final class Leaves implements AutoCloseable {
    /** Longer texts are shown in part; nobody reads them here. */
    private static final int CHARACTERS = 200_000;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(Leaves::daemon);
    private final AtomicLong newest = new AtomicLong();
    private final Exported document;

    /** The last print, so that a look at another format does not derive it again. */
    private Optional<Print> print = Optional.empty();

    Leaves(Exported document) {
        this.document = document;
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "export preview");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Makes the leaves of a format.
     *
     * @param begin told, on the event thread, when the first leaf is there
     * @param more told of each leaf after that
     */
    void make(Exporter format, Choices choices, Runnable begin, Consumer<Leaf> more) {
        long wanted = newest.incrementAndGet();
        worker.execute(
                () -> {
                    Teller teller = new Teller(wanted, begin, more);
                    if (wanted == newest.get()) {
                        try {
                            tell(print(choices), format, teller);
                        } catch (BadInput refused) {
                            teller.test(new Leaf.Text(refused.getMessage()));
                        }
                    }
                });
    }

    private Print print(Choices choices) {
        Print made =
                print.filter(last -> last.choices().equals(choices))
                        .orElseGet(() -> document.print(choices));
        print = Optional.of(made);
        return made;
    }

    private static void tell(Print print, Exporter format, Predicate<Leaf> told) {
        OutputFolder memory = OutputFolder.inMemory();
        // The browser's page on paper is the guide's PDF: the same tree, the same words.
        Exporter shown = format.id().equals("html") ? new PdfGuide() : format;
        List<Path> files = shown.write(print, memory);
        Map<Path, byte[]> contents = memory.contents();
        List<Path> pdf = files.stream().filter(file -> file.toString().endsWith(".pdf")).toList();
        if (!pdf.isEmpty()) {
            PdfPictures.each(contents.get(pdf.get(0)), page -> told.test(new Leaf.Page(page)));
            return;
        }
        for (Path file : files) {
            if (!file.toString().endsWith(".html")
                    && !told.test(new Leaf.Text(text(contents.get(file))))) {
                return;
            }
        }
    }

    private static String text(byte[] content) {
        String text = new String(content, StandardCharsets.UTF_8);
        return text.length() <= CHARACTERS ? text : text.substring(0, CHARACTERS) + " …";
    }

    @Override
    public void close() {
        newest.incrementAndGet();
        worker.shutdown();
    }

    /** Passes leaves on to the event thread for as long as they are wanted. */
    private final class Teller implements Predicate<Leaf> {
        private final long wanted;
        private final Runnable begin;
        private final Consumer<Leaf> more;
        private boolean begun;

        Teller(long wanted, Runnable begin, Consumer<Leaf> more) {
            this.wanted = wanted;
            this.begin = begin;
            this.more = more;
        }

        @Override
        public boolean test(Leaf leaf) {
            boolean first = !begun;
            begun = true;
            SwingUtilities.invokeLater(
                    () -> {
                        if (wanted == newest.get()) {
                            if (first) {
                                begin.run();
                            }
                            more.accept(leaf);
                        }
                    });
            return wanted == newest.get();
        }
    }
}
