package counterstep.editor.remembered;

import counterstep.editor.theme.Theme;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.prefs.Preferences;

/** What the program remembers, in the user's preferences. */
public final class Remembered {
    private static final String THEME = "theme";
    private static final String ARRANGEMENT = "arrangement";
    private static final String LESS_MOTION = "motion.less";
    private static final String EXPORT = "export";
    private static final String MAXIMIZED = "window.maximized";

    private final Preferences node;
    private final RecentFiles files;

    /** Remembers in a node of the preferences. */
    public Remembered(Preferences node) {
        this.node = node;
        this.files = new RecentFiles(node);
    }

    /** What the user of this machine account had the program remember. */
    public static Remembered ofUser() {
        return new Remembered(Preferences.userRoot().node("counterstep"));
    }

    /** The theme that was shown last; light at first. */
    public Theme theme() {
        return node.get(THEME, "").equals(Theme.DARK.name()) ? Theme.DARK : Theme.LIGHT;
    }

    /** Remembers the theme. */
    public void theme(Theme theme) {
        node.put(THEME, theme.name());
    }

    /** Whether the user wants less motion; empty until chosen. */
    public Optional<Boolean> lessMotion() {
        return Optional.of(node.get(LESS_MOTION, ""))
                .filter(kept -> !kept.isEmpty())
                .map(Boolean::valueOf);
    }

    /** Remembers whether the user wants less motion. */
    public void lessMotion(boolean less) {
        node.putBoolean(LESS_MOTION, less);
    }

    /** Place and size of the window in pixels of the screen; empty at first. */
    public Optional<Rectangle> window() {
        Rectangle place =
                new Rectangle(
                        node.getInt("window.x", 0),
                        node.getInt("window.y", 0),
                        node.getInt("window.width", 0),
                        node.getInt("window.height", 0));
        return place.isEmpty() ? Optional.empty() : Optional.of(place);
    }

    /** Remembers place and size of the window. */
    public void window(Rectangle place) {
        node.putInt("window.x", place.x);
        node.putInt("window.y", place.y);
        node.putInt("window.width", place.width);
        node.putInt("window.height", place.height);
    }

    /** Whether the window filled the screen. */
    public boolean maximized() {
        return node.getBoolean(MAXIMIZED, false);
    }

    /** Remembers whether the window fills the screen. */
    public void maximized(boolean maximized) {
        node.putBoolean(MAXIMIZED, maximized);
    }

    /** Whether something in the window was left shown. */
    public boolean shown(String what, boolean atFirst) {
        return node.getBoolean("shown." + what, atFirst);
    }

    /** Remembers whether something in the window is shown. */
    public void show(String what, boolean shown) {
        node.putBoolean("shown." + what, shown);
    }

    /** Width or height of a panel in pixels, as it was left; empty at first. */
    public OptionalInt extent(String panel) {
        int extent = node.getInt("extent." + panel, 0);
        return extent > 0 ? OptionalInt.of(extent) : OptionalInt.empty();
    }

    /** Remembers width or height of a panel. */
    public void extent(String panel, int pixels) {
        node.putInt("extent." + panel, pixels);
    }

    /** Where the panels stood; empty at first, and if what was kept cannot be read any longer. */
    public Optional<Arrangement> arrangement() {
        return Arrangement.ofText(node.get(ARRANGEMENT, ""));
    }

    /** Remembers where the panels stand. */
    public void arrangement(Arrangement arrangement) {
        node.put(ARRANGEMENT, arrangement.text());
    }

    /** What was exported last, as {@link #export(String)} was told; empty at first. */
    public String export() {
        return node.get(EXPORT, "");
    }

    /** Remembers what was exported, in the words of who exports. */
    public void export(String line) {
        node.put(EXPORT, line);
    }

    /** The files that were open last, the latest first. */
    public List<RecentFile> recentFiles() {
        return files.all();
    }

    /** Puts a file in front of the recent ones. */
    public void note(RecentFile file) {
        files.note(file);
    }

    /** Takes a file off the recent ones. */
    public void forget(Path file) {
        files.forget(file);
    }
}
