package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** One run of the command line within the test, and what became of it. */
record Run(OptionalInt exitCode, String out, String err, Optional<Path> opened) {
    /** Runs on a machine without a display. */
    static Run of(Object... arguments) {
        return with(new Screen(false), arguments);
    }

    /** Runs on a machine with a display. */
    static Run onDisplay(Object... arguments) {
        return with(new Screen(true), arguments);
    }

    private static Run with(Screen screen, Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = List.of(arguments).stream().map(Object::toString).toArray(String[]::new);
        OptionalInt exitCode = new CommandLineRun(stream(out), stream(err), screen).of(words);
        return new Run(
                exitCode,
                out.toString(StandardCharsets.UTF_8),
                err.toString(StandardCharsets.UTF_8),
                screen.opened);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    /** The exit code of a run that ended. */
    int code() {
        assertTrue(exitCode.isPresent(), "a window is open");
        return exitCode.getAsInt();
    }

    /** The lines of the standard output. */
    List<String> lines() {
        return out.lines().toList();
    }

    /** Asserts that the run was refused with one line and nothing on the standard output. */
    String refusal() {
        assertTrue(code() == CommandLineRun.REFUSED, () -> "exit code " + exitCode + "\n" + out);
        assertTrue(out.isEmpty(), out);
        assertTrue(err.lines().count() == 1, err);
        return err.strip();
    }

    private static final class Screen implements Window {
        private final boolean there;
        private Optional<Path> opened = Optional.empty();

        private Screen(boolean there) {
            this.there = there;
        }

        @Override
        public boolean possible() {
            return there;
        }

        @Override
        public void open(Optional<Path> file) {
            opened = file;
        }
    }
}
