package counterstep.cli;

import counterstep.export.Choices;
import counterstep.export.Exporter;
import counterstep.export.Paper;
import counterstep.export.Print;
import counterstep.export.SpeechRate;
import counterstep.export.catalogue.Catalogue;
import counterstep.model.Procedure;
import counterstep.reach.Reach;
import counterstep.store.OutputFolder;
import counterstep.store.PhotoFolder;
import counterstep.store.ProcedureFile;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Writes a procedure in the formats that leave the program. */
@Command(
        name = "export",
        description =
                "Writes guide, sheets, tables or review report and prints the path of each file written.")
final class ExportCommand implements Callable<Integer> {
    private final PrintStream out;

    @Parameters(paramLabel = "FILE", description = "Procedure to export.")
    private Path file = Path.of("");

    @Option(
            names = "--to",
            paramLabel = "DIR",
            required = true,
            description = "Folder for the files; made if it is not there.")
    private Path folder = Path.of("");

    @Option(
            names = "--format",
            split = ",",
            paramLabel = "FORMAT",
            defaultValue = "html,md",
            converter = FromCatalogue.class,
            completionCandidates = Ids.class,
            description = "Any of: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private List<Exporter> formats = List.of();

    @Option(
            names = "--page",
            paramLabel = "PAPER",
            defaultValue = "a4",
            converter = PaperOfWord.class,
            completionCandidates = PaperWords.class,
            description =
                    "Paper of sheets and PDF: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private Paper paper = Paper.A4;

    @Option(
            names = "--words-per-minute",
            paramLabel = "WORDS",
            defaultValue = SpokenWords.USUAL,
            converter = SpokenWords.class,
            description =
                    "How fast narration and captions are spoken (default: ${DEFAULT-VALUE}; sensible"
                            + " from 120 to 180).")
    private SpeechRate rate = SpeechRate.USUAL;

    @Option(
            names = "--photo-width",
            paramLabel = "PIXELS",
            defaultValue = PhotoWidths.USUAL,
            converter = PhotoWidths.class,
            description =
                    "Longer side of photos at most, "
                            + Choices.NARROWEST
                            + " to "
                            + Choices.WIDEST
                            + " (default: ${DEFAULT-VALUE}).")
    private int photoWidth = Choices.USUAL.photoWidth();

    @Mixin private ReachOption reach = new ReachOption();

    ExportCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        Procedure whole = ProcedureFile.read(file);
        Optional<Reach> reached = reach.in(whole);
        Print print =
                Print.of(
                        ProcedureFile.baseName(file)
                                + reached.map(part -> "." + part.fileName()).orElse(""),
                        reached.map(Reach::procedure).orElse(whole),
                        PhotoFolder.beside(file),
                        new Choices(paper, rate, photoWidth));
        OutputFolder output = OutputFolder.at(folder);
        for (Exporter format : formats.stream().distinct().toList()) {
            format.write(print, output).forEach(out::println);
        }
        return CommandLineRun.CLEAN;
    }

    /** The formats' ids, for the help text. */
    static final class Ids implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Catalogue.all().stream().map(Exporter::id).iterator();
        }
    }

    /** The words for papers, for the help text. */
    static final class PaperWords implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Arrays.stream(Paper.values()).map(Paper::word).iterator();
        }
    }

    /** A paper's word to the paper. */
    static final class PaperOfWord implements ITypeConverter<Paper> {
        @Override
        public Paper convert(String word) {
            return Paper.find(word)
                    .orElseThrow(
                            () ->
                                    new TypeConversionException(
                                            "'%s' is none of %s"
                                                    .formatted(
                                                            word,
                                                            String.join(", ", new PaperWords()))));
        }
    }

    /** A format's id to the format. */
    static final class FromCatalogue implements ITypeConverter<Exporter> {
        @Override
        public Exporter convert(String id) {
            return Catalogue.find(id)
                    .orElseThrow(
                            () ->
                                    new TypeConversionException(
                                            "'%s' is none of %s".formatted(id, known())));
        }

        private static String known() {
            return Catalogue.all().stream().map(Exporter::id).collect(Collectors.joining(", "));
        }
    }
}
