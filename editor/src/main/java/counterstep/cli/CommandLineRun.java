package counterstep.cli;

import picocli.CommandLine;

/** One run of the command line. */
public final class CommandLineRun {
    private CommandLineRun() {}

    /**
     * Runs the command that the arguments name, on the process's own output.
     *
     * @return the exit code: 0 clean, 1 errors found, 2 bad input or usage
     */
    public static int of(String... arguments) {
        return new CommandLine(new CounterstepCommand()).execute(arguments);
    }
}
