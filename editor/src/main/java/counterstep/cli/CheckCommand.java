package counterstep.cli;

import counterstep.json.JsonText;
import counterstep.model.Procedure;
import counterstep.review.Mending;
import counterstep.store.ProcedureFile;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what a procedure lacks, how it goes wrong, and what would mend it. */
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

    @Option(
            names = "--mend",
            paramLabel = "TO",
            description = {
                "Apply all fixes, one after the other, and write the mended procedure to a file that"
                        + " is not there yet; then name what is left."
            })
    private Optional<Path> to = Optional.empty();

    CheckCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        Procedure procedure = ProcedureFile.read(file);
        Checked checked = to.map(path -> mended(procedure, path)).orElse(Checked.of(procedure));
        switch (format) {
            case TEXT -> CheckText.of(checked).forEach(out::println);
            case JSON -> out.println(JsonText.of(CheckJson.of(checked)));
        }
        return checked.review().clean() ? CommandLineRun.CLEAN : CommandLineRun.FOUND;
    }

    private static Checked mended(Procedure procedure, Path to) {
        Mending mending = Mending.of(procedure);
        ProcedureFile.writeNew(to, mending.procedure());
        return Checked.of(mending, to);
    }
}
