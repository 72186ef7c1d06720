package counterstep.words;

import java.util.Arrays;

/**
 * Text without its marks, a block of it: each character knows where it stood in what was written.
 * Growing while it is read.
 */
final class Prose {
    private final StringBuilder text = new StringBuilder();
    private int[] origins = new int[64];
    private boolean[] code = new boolean[64];

    void add(char letter, int origin, boolean inCode) {
        if (text.length() == origins.length) {
            origins = Arrays.copyOf(origins, 2 * origins.length);
            code = Arrays.copyOf(code, 2 * code.length);
        }
        origins[text.length()] = origin;
        code[text.length()] = inCode;
        text.append(letter);
    }

    boolean isEmpty() {
        return text.length() == 0;
    }

    int length() {
        return text.length();
    }

    char at(int place) {
        return text.charAt(place);
    }

    boolean code(int place) {
        return code[place];
    }

    int origin(int place) {
        return origins[place];
    }

    String words(int from, int to) {
        return text.substring(from, to);
    }
}
