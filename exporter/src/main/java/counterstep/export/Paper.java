package counterstep.export;

import java.util.Arrays;
import java.util.Optional;

/** The paper that sheets are laid out for (ISO 216 A4; ANSI/ASME Y14.1 A, 'Letter'). */
public enum Paper {
    A4("a4", "A4", 210, 297),
    LETTER("letter", "letter", 215.9, 279.4);

    private final String word;
    private final String css;
    private final double width;
    private final double height;

    Paper(String word, String css, double width, double height) {
        this.word = word;
        this.css = css;
        this.width = width;
        this.height = height;
    }

    /** The paper of a word. */
    public static Optional<Paper> find(String word) {
        return Arrays.stream(values())
                .filter(paper -> paper.word.equalsIgnoreCase(word))
                .findFirst();
    }

    /** The word on the command line. */
    public String word() {
        return word;
    }

    /** Its name in style sheets. */
    public String css() {
        return css;
    }

    /** Upright, in mm. */
    public double width() {
        return width;
    }

    /** Upright, in mm. */
    public double height() {
        return height;
    }
}
