package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import counterstep.model.Procedure;
import counterstep.testing.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FileStampTest {
    @TempDir private Path folder;
    private Path file;
    private Procedure fan;

    @BeforeEach
    void save() {
        file = folder.resolve("fan.procedure.json");
        fan = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));
        ProcedureFile.write(file, fan);
    }

    @Test
    void aFileThatIsOnlyReadKeepsItsStamp() {
        FileStamp before = FileStamp.of(file);
        assertEquals(fan, ProcedureFile.read(file));
        assertEquals(before, FileStamp.of(file));
    }

    @Test
    void aFileSavedAgainIsAnotherOneEvenAtTheSameTimeAndLength() throws IOException {
        FileStamp before = FileStamp.of(file);
        ProcedureFile.write(file, fan);
        Files.setLastModifiedTime(file, FileTime.from(before.modified()));
        FileStamp after = FileStamp.of(file);
        assertEquals(before.bytes(), after.bytes());
        assertEquals(before.modified(), after.modified());
        assertNotEquals(before, after);
    }

    @Test
    void aFileWrittenInPlaceIsToldByItsTime() throws IOException {
        FileStamp before = FileStamp.of(file);
        Files.setLastModifiedTime(file, FileTime.from(before.modified().plusMillis(1)));
        assertNotEquals(before, FileStamp.of(file));
    }

    @Test
    void aFileThatIsGoneIsNotThere() throws IOException {
        Files.delete(file);
        assertFalse(FileStamp.of(file).there());
    }
}
