package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.input.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
    private static final byte[] TEXT = "text".getBytes(StandardCharsets.UTF_8);

    @TempDir Path home;

    @Test
    void makesTheFolderAndReplacesTheFileWhole() throws IOException {
        OutputFolder folder = OutputFolder.at(home.resolve("a").resolve("b"));
        folder.write("pump.guide.md", "a longer old text".getBytes(StandardCharsets.UTF_8));
        Path written = folder.write("pump.guide.md", TEXT);
        assertEquals(home.resolve("a").resolve("b").resolve("pump.guide.md"), written);
        assertEquals("text", Files.readString(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "..", "../x", "a/b", "a\\b", "c:x", "a\nb"})
    void refusesWhatIsNoPlainName(String name) {
        OutputFolder folder = OutputFolder.at(home.resolve("out"));
        assertThrows(BadInput.class, () -> folder.write(name, TEXT));
        assertFalse(Files.exists(home.resolve("out")));
    }

    @Test
    void refusesAFileInPlaceOfTheFolder() throws IOException {
        Path file = Files.writeString(home.resolve("out"), "mine");
        String message =
                assertThrows(BadInput.class, () -> OutputFolder.at(file).write("x.md", TEXT))
                        .getMessage();
        assertEquals(file + ": a file, no folder; name another", message);
        assertEquals("mine", Files.readString(file));
    }
}
