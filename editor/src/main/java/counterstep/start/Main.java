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
        sayWhichGtk();
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        new CommandLineRun(out, err, new Display()).of(arguments).ifPresent(System::exit);
    }

    /**
     * Swing would load GTK 2 at some moments, such as opening a page in the browser, and JavaFX,
     * which draws the preview, refuses to start beside it. Read when either is loaded, so it has to
     * be said before; what the user says counts.
     */
    private static void sayWhichGtk() {
        if (System.getProperty("jdk.gtk.version") == null) {
            System.setProperty("jdk.gtk.version", "3");
        }
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
    }
}
