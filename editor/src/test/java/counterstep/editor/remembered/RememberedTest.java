package counterstep.editor.remembered;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.theme.Theme;
import counterstep.model.Severity;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.prefs.Preferences;
import org.junit.jupiter.api.Test;

final class RememberedTest {
    private final Preferences node = new PreferencesInMemory();
    private final Remembered remembered = new Remembered(node);

    private static RecentFile file(String name, String title) {
        return new RecentFile(
                Path.of(name), title, "2 steps", Instant.ofEpochMilli(5), Optional.empty());
    }

    private List<String> files() {
        return new Remembered(node)
                .recentFiles().stream().map(each -> each.file().toString()).toList();
    }

    @Test
    void atFirstNothingIsRemembered() {
        assertEquals(Theme.LIGHT, remembered.theme());
        assertEquals(Optional.empty(), remembered.window());
        assertEquals(Optional.empty(), remembered.lessMotion());
        assertEquals(OptionalInt.empty(), remembered.extent("items"));
        assertEquals(List.of(), remembered.recentFiles());
    }

    @Test
    void theWindowIsRemembered() {
        remembered.theme(Theme.DARK);
        remembered.window(new Rectangle(-20, 30, 900, 700));
        remembered.maximized(true);
        remembered.lessMotion(false);
        remembered.extent("items", 301);
        Remembered later = new Remembered(node);
        assertEquals(Theme.DARK, later.theme());
        assertEquals(Optional.of(new Rectangle(-20, 30, 900, 700)), later.window());
        assertEquals(true, later.maximized());
        assertEquals(Optional.of(false), later.lessMotion());
        assertEquals(OptionalInt.of(301), later.extent("items"));
    }

    @Test
    void theArrangementIsRemembered() {
        Arrangement arrangement =
                Arrangement.empty().with(Side.LEFT, "Items").with(Side.BELOW, "Findings");
        assertEquals(Optional.empty(), remembered.arrangement());
        remembered.arrangement(arrangement);
        assertEquals(Optional.of(arrangement), new Remembered(node).arrangement());
        node.put("arrangement", "left: Items|nowhere: Findings");
        assertEquals(Optional.empty(), new Remembered(node).arrangement());
    }

    @Test
    void aFileComesBackAsItWasNoted() {
        RecentFile noted =
                new RecentFile(
                        Path.of("/there/pump.procedure.json"),
                        "Pump",
                        "revision 3, 27 steps",
                        Instant.ofEpochMilli(1234567),
                        Optional.of(Severity.DOUBT));
        remembered.note(noted);
        assertEquals(List.of(noted), new Remembered(node).recentFiles());
    }

    @Test
    void theLatestStandsFirstAndNoneTwice() {
        remembered.note(file("a", "A"));
        remembered.note(file("b", "B"));
        remembered.note(file("a", "A again"));
        assertEquals(List.of("a", "b"), files());
    }

    @Test
    void sixFilesAreKept() {
        List.of("a", "b", "c", "d", "e", "f", "g").forEach(each -> remembered.note(file(each, "")));
        assertEquals(List.of("g", "f", "e", "d", "c", "b"), files());
    }

    @Test
    void aFileThatIsForgottenLeavesNoGap() {
        List.of("a", "b", "c").forEach(each -> remembered.note(file(each, "")));
        remembered.forget(Path.of("b"));
        assertEquals(List.of("c", "a"), files());
    }

    @Test
    void aTitleThatPreferencesCannotHoldIsCleanedAndCut() {
        remembered.note(file("a", "Pu\u0000mp\ud800\uffff" + "x".repeat(9000)));
        assertEquals("Pump" + "x".repeat(196), remembered.recentFiles().get(0).title());
    }

    @Test
    void aFileThatPreferencesCannotHoldIsLeftOut() {
        remembered.note(file("b".repeat(9000), "B"));
        remembered.note(file("line\nfeed", "B"));
        assertEquals(List.of(), files());
    }
}
