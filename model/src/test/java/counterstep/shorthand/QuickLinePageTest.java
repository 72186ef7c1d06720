package counterstep.shorthand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Procedure;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The examples of docs/quick-line.md are read as they say. */
final class QuickLinePageTest {
    private static List<String[]> examples() throws IOException {
        String page =
                Files.readString(Samples.projectFolder().resolve("docs").resolve("quick-line.md"));
        return page.substring(page.indexOf("## Examples"))
                .lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(1).split("\\|"))
                .toList();
    }

    @Test
    void eachExampleDoesWhatThePageSays() throws IOException {
        Procedure now = Procedure.titled("lamp", "Lamp");
        List<String[]> examples = examples();
        assertTrue(examples.size() >= 15, () -> examples.size() + " examples");
        for (String[] example : examples) {
            String typed = example[0].strip().replaceAll("^`|`$", "");
            Reading reading = Shorthand.read(now, Optional.empty(), typed).orElseThrow();
            assertEquals(example[2].strip(), reading.explanation());
            assertEquals(example[1].strip(), reading.newStep() ? reading.title() : "", typed);
            now = reading.edit().apply(now);
        }
    }
}
