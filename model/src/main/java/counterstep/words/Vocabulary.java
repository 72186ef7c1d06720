package counterstep.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is known of one language. Another language is another data file and another line here. */
public final class Vocabulary {
    private static final Map<String, Vocabulary> LANGUAGES = Map.of("en", new Vocabulary("en"));

    private final NumberWords numbers;
    private final Phrasing phrasing;

    private Vocabulary(String language) {
        LanguageFile file = LanguageFile.read(language);
        numbers = new NumberWords(file);
        phrasing = new Phrasing(file, numbers);
    }

    /** The vocabulary of a language (BCP 47 tag, 'en-GB' is 'en'); empty where there is none. */
    public static Optional<Vocabulary> of(String language) {
        String[] subtags = language.strip().toLowerCase(Locale.ROOT).split("[-_]", 2);
        return Optional.ofNullable(LANGUAGES.get(subtags[0]));
    }

    static Vocabulary english() {
        return LANGUAGES.get("en");
    }

    /** How numbers are written. */
    public NumberWords numbers() {
        return numbers;
    }

    /** How actions are said. */
    public Phrasing phrasing() {
        return phrasing;
    }
}
