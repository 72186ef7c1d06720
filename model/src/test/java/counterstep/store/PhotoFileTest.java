package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.input.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PhotoFileTest {
    @TempDir private Path folder;

    @Test
    void isReadAsItIs() throws IOException {
        Path file = Files.write(folder.resolve("lid.jpg"), new byte[] {1, 2, 3});
        assertArrayEquals(new byte[] {1, 2, 3}, PhotoFile.read(file));
    }

    @Test
    void aFolderOrAMissingFileIsRefusedInASentence() {
        assertEquals(
                "gone.jpg: no file; choose a photo",
                assertThrows(BadInput.class, () -> PhotoFile.read(folder.resolve("gone.jpg")))
                        .getMessage());
        assertThrows(BadInput.class, () -> PhotoFile.read(folder));
    }
}
