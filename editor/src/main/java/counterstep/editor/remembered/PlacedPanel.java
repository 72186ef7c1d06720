package counterstep.editor.remembered;

import java.awt.Rectangle;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where one panel stands.
 *
 * @param panel its title
 * @param side the side it stands at, or goes back to
 * @param front whether it is the one that is seen among those at its side
 * @param hidden whether it is not seen at all
 * @param window place and size, in pixels of the screen, of the window of its own it floats in
 */
public record PlacedPanel(
        String panel, Side side, boolean front, boolean hidden, Optional<Rectangle> window) {
    private static final Pattern WRITTEN =
            Pattern.compile(
                    "(\\w+)( front)?( hidden)?"
                            + "( at (-?\\d{1,5}) (-?\\d{1,5}) (\\d{2,5}) (\\d{2,5}))?: (.{1,40})");

    /** At a side, among others. */
    static PlacedPanel at(Side side, String panel) {
        return new PlacedPanel(panel, side, false, false, Optional.empty());
    }

    /** Whether it is seen at its side, or behind one that is. */
    public boolean docked() {
        return !hidden && window.isEmpty();
    }

    PlacedPanel withFront(boolean nowFront) {
        return new PlacedPanel(panel, side, nowFront, hidden, window);
    }

    PlacedPanel withHidden(boolean nowHidden) {
        return new PlacedPanel(panel, side, front && !nowHidden, nowHidden, window);
    }

    PlacedPanel withWindow(Rectangle nowWindow) {
        return new PlacedPanel(panel, side, false, hidden, Optional.of(nowWindow));
    }

    String text() {
        return side.word()
                + (front ? " front" : "")
                + (hidden ? " hidden" : "")
                + window.map(w -> " at %d %d %d %d".formatted(w.x, w.y, w.width, w.height))
                        .orElse("")
                + ": "
                + panel;
    }

    /** As written by {@link #text()}; empty if it was not. */
    static Optional<PlacedPanel> ofText(String text) {
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            return Optional.empty();
        }
        return Side.ofWord(written.group(1))
                .map(
                        side ->
                                new PlacedPanel(
                                        written.group(9),
                                        side,
                                        written.group(2) != null,
                                        written.group(3) != null,
                                        window(written)));
    }

    private static Optional<Rectangle> window(Matcher written) {
        if (written.group(4) == null) {
            return Optional.empty();
        }
        return Optional.of(
                new Rectangle(
                        Integer.parseInt(written.group(5)),
                        Integer.parseInt(written.group(6)),
                        Integer.parseInt(written.group(7)),
                        Integer.parseInt(written.group(8))));
    }
}
