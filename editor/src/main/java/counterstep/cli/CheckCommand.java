package counterstep.cli;

import counterstep.check.Finding;
import counterstep.json.JsonText;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.review.Review;
import counterstep.store.ProcedureFile;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what a procedure lacks. */
@Command(
        name = "check",
        description = "Names what is missing or wrong; exit code 1 if there is an error.")
final class CheckCommand implements Callable<Integer> {
    private final PrintStream out;

    @Parameters(paramLabel = "FILE", description = "Procedure to check.")
    private Path file = Path.of("");

    @Option(
            names = "--format",
            paramLabel = "text|json",
            converter = TextOrJson.Names.class,
            description = "For people (text, the default) or for programs (json).")
    private TextOrJson format = TextOrJson.TEXT;

    CheckCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        Procedure procedure = ProcedureFile.read(file);
        Review review = Review.of(procedure);
        switch (format) {
            case TEXT -> printText(review, Index.of(procedure));
            case JSON -> out.println(JsonText.of(FindingsJson.of(review.findings())));
        }
        return review.clean() ? CommandLineRun.CLEAN : CommandLineRun.FOUND;
    }

    private void printText(Review review, Index index) {
        for (Finding finding : review.findings()) {
            out.println(FindingLine.of(finding, index));
        }
        out.println(
                "%s, %s, %s."
                        .formatted(
                                Amount.of(review.count(Severity.ERROR), "error"),
                                Amount.of(review.count(Severity.DOUBT), "doubt"),
                                Amount.of(review.count(Severity.HINT), "hint")));
    }
}
