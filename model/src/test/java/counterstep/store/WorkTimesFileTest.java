package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.handbook.WorkTimes;
import counterstep.input.BadInput;
import counterstep.model.Verb;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WorkTimesFileTest {
    @TempDir private Path folder;

    @Test
    void ownFiguresAreReadFromAFile() throws Exception {
        Path file = Files.writeString(folder.resolve("own.csv"), "# ours\ncheck;12.5;0\n");

        WorkTimes times = WorkTimesFile.read(file);

        assertEquals(12.5, times.of(Verb.CHECK, Optional.empty()).orElseThrow().work());
    }

    @Test
    void aRefusalNamesTheFileAndTheLine() throws Exception {
        Path file = Files.writeString(folder.resolve("own.csv"), "check;12.5;0\nsoon\n");

        BadInput refused = assertThrows(BadInput.class, () -> WorkTimesFile.read(file));

        assertEquals("own.csv, line 2", refused.where());
        Path missing = folder.resolve("none.csv");
        assertTrue(
                assertThrows(BadInput.class, () -> WorkTimesFile.read(missing))
                        .getMessage()
                        .startsWith("none.csv"));
    }

    @Test
    void whatIsWrittenIsReadAgainAndWhatIsWrongLeavesTheOldFile() throws Exception {
        Path file = folder.resolve("kept").resolve("own.csv");
        assertEquals("", WorkTimesFile.text(file));

        WorkTimesFile.write(file, "check;12.5;0\n");
        assertThrows(BadInput.class, () -> WorkTimesFile.write(file, "soon\n"));

        assertEquals("check;12.5;0\n", WorkTimesFile.text(file));
        assertEquals(
                12.5,
                WorkTimesFile.read(file).of(Verb.CHECK, Optional.empty()).orElseThrow().work());
    }
}
