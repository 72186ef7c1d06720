package counterstep.cli;

import java.io.PrintStream;
import java.util.List;

/** The commands, in the order in which help names them. */
final class Commands {
    private Commands() {}

    /** All commands, printing results to {@code out} and remarks to {@code err}. */
    static List<Object> all(PrintStream out, PrintStream err) {
        return List.of(new CheckCommand(out), new PlanCommand(out, err), new ExportCommand(out));
    }
}
