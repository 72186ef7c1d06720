package counterstep.cli;

import java.io.PrintStream;
import java.util.OptionalInt;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;

/** One run of the command line, on streams that the caller hands in. */
public final class CommandLineRun {
    /** Nothing to complain of. */
    static final int CLEAN = 0;

    /** {@code check} found an error, or {@code plan} a loop. */
    static final int FOUND = 1;

    /** Bad input or usage. */
    static final int REFUSED = 2;

    private final PrintStream out;
    private final PrintStream err;
    private final Window window;

    /**
     * A run that has not begun.
     *
     * @param out where results go
     * @param err where refusals go
     * @param window what opens when no command is named
     */
    public CommandLineRun(PrintStream out, PrintStream err, Window window) {
        this.out = out;
        this.err = err;
        this.window = window;
    }

    /**
     * Does what the arguments say.
     *
     * @return the exit code (0 clean, 1 errors found or a loop, 2 bad input or usage); empty when a
     *     window is open now and decides itself when the process ends
     */
    public OptionalInt of(String... arguments) {
        CounterstepCommand program = new CounterstepCommand(err, window);
        int exitCode = execute(commandLine(program), program, arguments);
        out.flush();
        err.flush();
        return program.opened() ? OptionalInt.empty() : OptionalInt.of(exitCode);
    }

    private int execute(CommandLine line, CounterstepCommand program, String... arguments) {
        try {
            return line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError tooLarge) {
            return refuse(tooLarge, program);
        }
    }

    private CommandLine commandLine(CounterstepCommand program) {
        CommandLine line = new CommandLine(program);
        Commands.all(out, err).forEach(line::addSubcommand);
        line.setOut(Plain.writer(out));
        line.setErr(Plain.writer(err));
        line.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler(this::refuseUsage);
        line.setExecutionExceptionHandler((fault, command, parsed) -> refuse(fault, program));
        return line;
    }

    private int refuseUsage(ParameterException wrong, String... arguments) {
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        err.println(
                Plain.line(
                        command + ": " + wrong.getMessage() + "; see '" + command + " --help'."));
        return REFUSED;
    }

    private int refuse(Throwable fault, CounterstepCommand program) {
        err.println(Plain.line(Refusal.sentence(fault)));
        if (program.debug()) {
            fault.printStackTrace(err);
        }
        return REFUSED;
    }
}
