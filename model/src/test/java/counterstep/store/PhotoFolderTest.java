package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoFolderTest {
    private static final byte[] LID = {1, 2, 3};

    @TempDir Path home;
    private Path document;
    private Path photos;

    @BeforeEach
    void documentWithOnePhoto() throws IOException {
        document = home.resolve("work").resolve("pump.procedure.json");
        photos = Files.createDirectories(home.resolve("work").resolve("pump.photos"));
        Files.write(photos.resolve("lid.png"), LID);
        Files.writeString(home.resolve("work").resolve("secret.txt"), "secret");
    }

    @Test
    void givesThePhotosOfTheFolderBesideTheDocument() {
        assertArrayEquals(LID, PhotoFolder.beside(document).bytes("lid.png").orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"gone.png", "../secret.txt", "", ".", "..", "a\0b", "/etc/hostname"})
    void givesNothingElse(String name) {
        assertEquals(Optional.empty(), PhotoFolder.beside(document).bytes(name));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "links need rights there")
    void followsNoLinkOutOfTheFolder() throws IOException {
        Files.createSymbolicLink(photos.resolve("x.png"), Path.of("..", "secret.txt"));
        assertEquals(Optional.empty(), PhotoFolder.beside(document).bytes("x.png"));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "links need rights there")
    void isNoFolderThatIsALinkToSomewhereElse() throws IOException {
        Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
        Files.write(elsewhere.resolve("lid.png"), LID);
        Files.createSymbolicLink(home.resolve("work").resolve("fan.photos"), elsewhere);
        Path fan = home.resolve("work").resolve("fan.procedure.json");
        assertEquals(Optional.empty(), PhotoFolder.beside(fan).bytes("lid.png"));
    }

    @Test
    void aDocumentThatWasNeverSavedHasNone() {
        assertEquals(Optional.empty(), PhotoFolder.none().bytes("lid.png"));
    }
}
