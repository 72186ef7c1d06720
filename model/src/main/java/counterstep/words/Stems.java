package counterstep.words;

import java.util.List;
import java.util.Locale;

/** Takes the endings of the many and of the owner off a word. */
final class Stems {
    private final List<List<String>> endings;

    Stems(LanguageFile file) {
        this.endings = file.rows("endings");
    }

    String of(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        for (List<String> ending : endings) {
            if (lower.length() > ending.get(0).length() && lower.endsWith(ending.get(0))) {
                return lower.substring(0, lower.length() - ending.get(0).length()) + ending.get(1);
            }
        }
        return lower;
    }
}
