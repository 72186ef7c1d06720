package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class CounterstepCommandTest {
    @Test
    void withoutDisplayOneSentenceNamesTheCommands() {
        String sentence = Run.of().refusal();

        assertTrue(sentence.contains("no display"), sentence);
        assertTrue(sentence.contains("counterstep check FILE"), sentence);
        assertTrue(sentence.contains("counterstep plan FILE"), sentence);
        assertTrue(sentence.contains("counterstep export FILE --to DIR"), sentence);
        assertEquals(sentence, Run.of("lid.procedure.json").refusal());
    }

    @Test
    void theWindowOpensWithTheNamedFileAndKeepsTheProcess() {
        Run run = Run.onDisplay("lid.procedure.json");

        assertEquals(OptionalInt.empty(), run.exitCode());
        assertEquals(Optional.of(Path.of("lid.procedure.json")), run.opened());
        assertEquals(OptionalInt.empty(), Run.onDisplay().exitCode());
    }

    @Test
    void versionIsTheBuildsAndTheSameEverywhere() {
        String version = Run.of("--version").out();

        assertTrue(version.matches("Counterstep \\d+\\.\\d+\\.\\d+\\R"), version);
        for (String command : commands()) {
            assertEquals(version, Run.of(command, "--version").out());
        }
    }

    @Test
    void helpNamesEveryCommandAndTheExitCodes() {
        Run help = Run.of("--help");

        assertEquals(0, help.code());
        for (String command : commands()) {
            assertTrue(help.out().contains("\n  " + command + " "), help.out());
            Run own = Run.of(command, "--help");
            assertEquals(0, own.code());
            assertTrue(own.out().startsWith("Usage: counterstep " + command), own.out());
        }
        assertTrue(help.out().contains("Exit codes:"), help.out());
    }

    @Test
    void usageErrorsAreOneLineThatNamesTheHelp() {
        assertEquals(
                "counterstep: Unknown option: '--colour'; see 'counterstep --help'.",
                Run.of("--colour").refusal());
        assertTrue(
                Run.of("a.procedure.json", "b.procedure.json")
                        .refusal()
                        .contains("b.procedure.json"));
    }

    private static String[] commands() {
        return new String[] {"check", "plan", "export"};
    }
}
