package counterstep.start;

import counterstep.cli.CommandLineRun;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The entry of the jar. */
public final class Main {
    private Main() {}

    /**
     * Runs the command that the arguments name and ends the process with its exit code; without a
     * command the window lives on. What is printed is UTF-8, whatever the locale: other programs
     * read it.
     */
    public static void main(String[] arguments) {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        new CommandLineRun(out, err, new Display()).of(arguments).ifPresent(System::exit);
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
