package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import counterstep.model.Extras;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

    @Test
    void putsPhotosBesideAnotherFileByteForByte() {
        Path other = home.resolve("fan.procedure.json");
        PhotoFolder.copy(List.of(photo("lid.png")), PhotoFolder.beside(document), other, true);
        assertArrayEquals(LID, PhotoFolder.beside(other).bytes("lid.png").orElseThrow());
    }

    @Test
    void leavesOriginalsThatLieThereUntouchedUnlessTheyAreReplaced() {
        PhotoFolder changed = PhotoFolder.of(name -> Optional.of(new byte[] {9}));
        PhotoFolder.copy(List.of(photo("lid.png")), changed, document, false);
        assertArrayEquals(LID, PhotoFolder.beside(document).bytes("lid.png").orElseThrow());
        PhotoFolder.copy(List.of(photo("lid.png")), changed, document, true);
        assertArrayEquals(
                new byte[] {9}, PhotoFolder.beside(document).bytes("lid.png").orElseThrow());
    }

    @Test
    void makesNoFolderForPhotosThatAreMissing() {
        Path other = home.resolve("fan.procedure.json");
        PhotoFolder.copy(List.of(photo("gone.png")), PhotoFolder.none(), other, true);
        assertFalse(Files.exists(home.resolve("fan.photos")));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "links need rights there")
    void writesThroughNoLink() throws IOException {
        Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
        Files.createSymbolicLink(home.resolve("fan.photos"), elsewhere);
        Path fan = home.resolve("fan.procedure.json");
        PhotoFolder from = PhotoFolder.beside(document);
        BadInput refused =
                assertThrows(
                        BadInput.class,
                        () -> PhotoFolder.copy(List.of(photo("lid.png")), from, fan, true));
        assertTrue(refused.getMessage().startsWith("fan.photos: "), refused.getMessage());
        assertFalse(Files.exists(elsewhere.resolve("lid.png")));
    }

    private static Photo photo(String file) {
        return new Photo(new PhotoId("p1"), file, "", "", 0, Extras.NONE);
    }
}
