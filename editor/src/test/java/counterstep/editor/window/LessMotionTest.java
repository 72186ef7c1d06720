package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.editor.remembered.Remembered;
import java.awt.Toolkit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import javax.swing.JCheckBoxMenuItem;
import org.junit.jupiter.api.Test;

/** The tick of the menu, and what comes back at the next start. */
final class LessMotionTest {
    private final Preferences kept = new PreferencesInMemory();
    private final List<Boolean> obeyed = new ArrayList<>();

    private JCheckBoxMenuItem started() {
        LessMotion command = new LessMotion(obeyed::add);
        JCheckBoxMenuItem entry = new JCheckBoxMenuItem(command);
        command.restore(new Remembered(kept), Toolkit.getDefaultToolkit());
        return entry;
    }

    @Test
    void untilItIsChosenItIsAsTheDesktopHasItAndNothingIsRemembered() {
        assertEquals(false, started().isSelected());
        assertEquals(List.of(false), obeyed);
        assertEquals(Optional.empty(), new Remembered(kept).lessMotion());
    }

    @Test
    void whatIsChosenIsObeyedAndComesBack() {
        started().doClick();
        assertEquals(List.of(false, true), obeyed);

        JCheckBoxMenuItem later = started();
        assertEquals(true, later.isSelected());
        later.doClick();
        assertEquals(List.of(false, true, true, false), obeyed);
        assertEquals(Optional.of(false), new Remembered(kept).lessMotion());
    }
}
