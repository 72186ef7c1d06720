package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the page of a check says is what the check says of itself. */
final class CheckPagesTest {
    private static final Path PAGES = Samples.projectFolder().resolve("docs/checks");

    @Test
    void aPageSaysNameSeverityAndFaultAsTheCheckDoes() throws IOException {
        for (Check check : AllChecks.list()) {
            About about = check.about();
            String page = Files.readString(PAGES.resolve(about.id() + ".md"));
            String start =
                    "`%s` · %s\n\n%s\n\n## Why it matters\n"
                            .formatted(about.id(), about.severity().word(), about.fault());
            assertTrue(page.contains(start), page);
            assertTrue(page.contains("\n## What to do\n") && page.contains("\n## Example\n"), page);
        }
    }
}
