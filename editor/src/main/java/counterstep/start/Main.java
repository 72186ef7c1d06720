package counterstep.start;

import counterstep.cli.CommandLineRun;

/** The entry of the jar. */
public final class Main {
    private Main() {}

    /** Runs the command that the arguments name and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(CommandLineRun.of(arguments));
    }
}
