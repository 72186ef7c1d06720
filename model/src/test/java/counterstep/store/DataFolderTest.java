package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class DataFolderTest {
    private static final Path HOME = Path.of("/home/writer");

    private static Path of(String system, Map<String, String> environment) {
        return DataFolder.of(system, HOME, name -> environment.getOrDefault(name, ""));
    }

    @Test
    void eachKindOfSystemHasItsPlace() {
        assertEquals(HOME.resolve(".local/share/counterstep"), of("Linux", Map.of()));
        assertEquals(
                HOME.resolve("Library/Application Support/counterstep"), of("Mac OS X", Map.of()));
        assertEquals(HOME.resolve("AppData/Local/counterstep"), of("Windows 11", Map.of()));
    }

    @Test
    void thePlaceThatTheUserNamesIsTaken() {
        assertEquals(Path.of("/data/counterstep"), of("Linux", Map.of("XDG_DATA_HOME", "/data")));
    }

    @Test
    void aPlaceThatDependsOnTheWorkingFolderIsNone() {
        assertEquals(
                HOME.resolve(".local/share/counterstep"),
                of("Linux", Map.of("XDG_DATA_HOME", "data")));
    }
}
