package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.testing.Samples;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ExportCommandTest {
    private static final Path SAMPLE = Samples.file(Samples.STICK_UNIT);

    @TempDir private Path folder;

    @Test
    void bothFormatsAreWrittenAndTheirPathsPrinted() throws Exception {
        Path out = folder.resolve("guide");
        Run run = Run.of("export", SAMPLE, "--to", out);

        assertEquals(0, run.code(), run.err());
        Path html = out.resolve("orrin-c4-stick-unit.guide.html");
        Path markdown = out.resolve("orrin-c4-stick-unit.guide.md");
        assertEquals(List.of(html.toString(), markdown.toString()), run.lines().subList(0, 2));
        assertEquals(written(out), run.lines().stream().map(Path::of).sorted().toList());
        assertTrue(Files.readString(html).contains("</html>"));
    }

    @Test
    void aFormatNamedAloneOrTwiceIsWrittenOnce() throws Exception {
        Run run = Run.of("export", SAMPLE, "--to", folder, "--format", "md,md");

        assertEquals(0, run.code(), run.err());
        Path markdown = folder.resolve("orrin-c4-stick-unit.guide.md");
        assertEquals(1, Collections.frequency(run.lines(), markdown.toString()), run.out());
        assertEquals(written(folder), run.lines().stream().map(Path::of).sorted().toList());
        assertFalse(Files.exists(folder.resolve("orrin-c4-stick-unit.guide.html")));
    }

    @Test
    void anOlderGuideIsReplacedWhole() throws Exception {
        Path html = folder.resolve("orrin-c4-stick-unit.guide.html");
        Files.writeString(html, "an older guide, ".repeat(200_000));

        assertEquals(0, Run.of("export", SAMPLE, "--to", folder, "--format", "html").code());
        assertFalse(Files.readString(html).contains("an older guide"));
    }

    @Test
    void usageErrorsWriteNothing() throws Exception {
        Path out = folder.resolve("guide");

        assertTrue(
                Run.of("export", SAMPLE, "--to", out, "--format", "html,punch-card")
                        .refusal()
                        .contains("'punch-card' is none of html, md"));
        assertTrue(Run.of("export", SAMPLE).refusal().contains("--to"));
        assertFalse(Files.exists(out));
    }

    @Test
    void aFolderThatIsAFileIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("taken"), "mine");

        assertTrue(Run.of("export", SAMPLE, "--to", file).refusal().contains("taken"));
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void theVoiceIsAsFastAsAskedForAndNoFasterThanPeopleSpeak() throws Exception {
        String[] spoken = {"--format", "narration", "--words-per-minute"};
        assertEquals(0, Run.of("export", SAMPLE, "--to", folder, spoken[0], spoken[1]).code());
        Path script = folder.resolve("orrin-c4-stick-unit.narration.md");
        assertTrue(Files.readString(script).contains("at 150 words per minute"));
        assertEquals(
                0,
                Run.of("export", SAMPLE, "--to", folder, spoken[0], spoken[1], spoken[2], "120")
                        .code());
        assertTrue(Files.readString(script).contains("at 120 words per minute"));
        for (String refused : List.of("0", "301", "-150", "fast", "99999999999")) {
            String why =
                    Run.of("export", SAMPLE, "--to", folder.resolve("no"), spoken[2], refused)
                            .refusal();
            assertTrue(why.contains(refused), why);
        }
        assertFalse(Files.exists(folder.resolve("no")));
    }

    @Test
    void photosAreAsWideAsAskedFor() throws Exception {
        Path fan = Samples.file(Samples.SUPPLY_FAN);
        String[] wide = {"--format", "md", "--photo-width"};
        assertEquals(
                0, Run.of("export", fan, "--to", folder, wide[0], wide[1], wide[2], "300").code());
        int photos = 0;
        for (Path file : written(folder)) {
            if (!file.toString().endsWith(".md")) {
                BufferedImage photo = ImageIO.read(file.toFile());
                assertEquals(300, Math.max(photo.getWidth(), photo.getHeight()));
                photos++;
            }
        }
        assertTrue(photos > 2);
        for (String refused : List.of("119", "4097", "-300", "wide")) {
            String why =
                    Run.of("export", fan, "--to", folder.resolve("no"), wide[2], refused).refusal();
            assertTrue(why.contains(refused), why);
        }
        assertFalse(Files.exists(folder.resolve("no")));
    }

    @Test
    void helpNamesTheFormats() {
        assertTrue(Run.of("export", "--help").out().contains("html, md"));
    }

    private static List<Path> written(Path folder) throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
