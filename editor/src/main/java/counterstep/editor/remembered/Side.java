package counterstep.editor.remembered;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The sides of the step graph at which panels stand. */
public enum Side {
    LEFT,
    RIGHT,
    BELOW;

    /** The word for it, 'left'. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Side> ofWord(String word) {
        return Arrays.stream(values()).filter(side -> side.word().equals(word)).findFirst();
    }
}
