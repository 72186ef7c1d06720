package counterstep.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;

/** The program itself, above its commands: without one it opens the window. */
@Command(
        name = "counterstep",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        scope = ScopeType.INHERIT,
        description = {
            "Proves service procedures complete: what comes off is put back, in an order that works.",
            "Without a command it opens the window."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:clean",
            "1:errors found (check), or links in a loop (plan)",
            "2:bad input or usage; nothing was written"
        })
final class CounterstepCommand implements Callable<Integer> {
    private static final String NO_DISPLAY =
            "There is no display to open the window on; without one use 'counterstep check FILE',"
                    + " 'counterstep plan FILE' or 'counterstep export FILE --to DIR'.";

    private final PrintStream err;
    private final Window window;
    private boolean opened;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "Procedure to open.")
    private Optional<Path> file = Optional.empty();

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "Print where in the program a failure arose.")
    private boolean debug;

    CounterstepCommand(PrintStream err, Window window) {
        this.err = err;
        this.window = window;
    }

    @Override
    public Integer call() {
        if (!window.possible()) {
            err.println(NO_DISPLAY);
            return CommandLineRun.REFUSED;
        }
        window.open(file);
        opened = true;
        return CommandLineRun.CLEAN;
    }

    /** Whether a window is open now. */
    boolean opened() {
        return opened;
    }

    /** Whether stack traces are wanted. */
    boolean debug() {
        return debug;
    }
}
