package counterstep.shorthand;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts words at semicolons or, where none stands outside brackets, at commas. A comma between
 * figures is a decimal one; nothing is cut between quotation marks.
 */
final class Cut {
    private final List<Integer> semicolons = new ArrayList<>();
    private final List<Integer> commas = new ArrayList<>();
    private final String words;

    private Cut(String words) {
        this.words = words;
        int depth = 0;
        boolean quoted = false;
        for (int at = 0; at < words.length(); at++) {
            char sign = words.charAt(at);
            quoted ^= sign == '"' && !digit(at - 1); // after a figure it means inches
            depth = Math.max(0, depth + (sign == '(' ? 1 : sign == ')' ? -1 : 0));
            boolean outside = depth == 0 && !quoted;
            if (outside && sign == ';') {
                semicolons.add(at);
            } else if (outside && sign == ',' && !(digit(at - 1) && digit(at + 1))) {
                commas.add(at);
            }
        }
    }

    private boolean digit(int at) {
        return at >= 0 && at < words.length() && words.charAt(at) >= '0' && words.charAt(at) <= '9';
    }

    private List<Integer> places() {
        return semicolons.isEmpty() ? commas : semicolons;
    }

    /** The pieces with words in them, outer blanks dropped. */
    static List<String> pieces(String words) {
        return pieces(words, new Cut(words).places());
    }

    /** The pieces between semicolons alone. */
    static List<String> atSemicolons(String words) {
        return pieces(words, new Cut(words).semicolons);
    }

    private static List<String> pieces(String words, List<Integer> places) {
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int place : places) {
            pieces.add(words.substring(from, place).strip());
            from = place + 1;
        }
        pieces.add(words.substring(from).strip());
        pieces.removeIf(String::isEmpty);
        return pieces;
    }

    /** Where the last piece begins. */
    static int lastStart(String words) {
        List<Integer> places = new Cut(words).places();
        return places.isEmpty() ? 0 : places.get(places.size() - 1) + 1;
    }
}
