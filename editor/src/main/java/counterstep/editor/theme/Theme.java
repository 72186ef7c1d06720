package counterstep.editor.theme;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.util.function.Supplier;
import javax.swing.UIManager;

/** The two looks of the window. */
public enum Theme {
    LIGHT("Light", LightLook::new),
    DARK("Dark", DarkLook::new);

    /** Package whose {@code FlatLaf.properties} holds what both looks share. */
    private static final String SHARED_DEFAULTS = "counterstep.editor.theme";

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // a constructor reference has no state
    private final Supplier<FlatLaf> look;

    Theme(String word, Supplier<FlatLaf> look) {
        this.word = word;
        this.look = look;
    }

    /** The word in the menu. */
    public String word() {
        return word;
    }

    /**
     * Makes this the look of all windows, those already open too. Call it on the event thread, and
     * once before the first component is made.
     */
    public void show() {
        FlatInterFont.installLazy();
        FlatLaf.registerCustomDefaultsSource(SHARED_DEFAULTS);
        FlatLaf.setup(look.get());
        FlatLaf.updateUI();
    }

    /** The look that is shown now; light before any is. */
    public static Theme current() {
        return UIManager.getLookAndFeel() instanceof DarkLook ? DARK : LIGHT;
    }

    /** The other one. */
    public Theme other() {
        return this == LIGHT ? DARK : LIGHT;
    }
}
