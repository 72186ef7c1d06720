package counterstep.words;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is known of one language. Another language is another data file and another line here. */
public final class Vocabulary {
    private static final Map<String, Vocabulary> LANGUAGES = Map.of("en", new Vocabulary("en"));

    private final Map<String, Set<WordClass>> classes = new HashMap<>();
    private final Map<String, Set<String>> kinds = new HashMap<>();
    private final Set<String> adverbEndings;
    private final String partOf;
    private final Stems stems;
    private final NumberWords numbers;
    private final Phrasing phrasing;
    private final TradeWords tradeWords;
    private final NamedSteps namedSteps;

    private Vocabulary(String language) {
        LanguageFile file = LanguageFile.read(language);
        for (WordClass kind : WordClass.values()) {
            for (String word : file.words(kind.section())) {
                classes.computeIfAbsent(word, any -> EnumSet.noneOf(WordClass.class)).add(kind);
            }
        }
        file.rows("kinds").forEach(row -> kinds.put(row.get(0), Set.of(row.get(1).split("\\s+"))));
        adverbEndings = file.words("adverb endings");
        partOf = file.lines("part of").get(0);
        stems = new Stems(file);
        numbers = new NumberWords(file);
        phrasing = new Phrasing(file, numbers);
        tradeWords = new TradeWords(file);
        namedSteps = new NamedSteps(file);
    }

    /** The vocabulary of a language (BCP 47 tag, 'en-GB' is 'en'); empty where there is none. */
    public static Optional<Vocabulary> of(String language) {
        String[] subtags = language.strip().toLowerCase(Locale.ROOT).split("[-_]", 2);
        return Optional.ofNullable(LANGUAGES.get(subtags[0]));
    }

    /** The vocabulary of a language, English where there is none of it yet. */
    public static Vocabulary orEnglish(String language) {
        return of(language).orElseGet(Vocabulary::english);
    }

    static Vocabulary english() {
        return LANGUAGES.get("en");
    }

    /** Whether a word, in small letters, is one of a class. */
    public boolean is(String word, WordClass kind) {
        return classes(word).contains(kind);
    }

    Set<WordClass> classes(String word) {
        return classes.getOrDefault(word, Set.of());
    }

    /** Whether a word says where to or how: 'out', 'gently'. */
    boolean manner(Token token) {
        return token.is(WordClass.PARTICLE)
                || token.classes().isEmpty()
                        && adverbEndings.stream().anyMatch(token.lower()::endsWith);
    }

    /** The word between a part and its whole: 'of'. */
    public String partOf() {
        return partOf;
    }

    /** Thing and things alike: a form to compare words by, not to show. */
    public String stem(String word) {
        return stems.of(word);
    }

    /** What else an item of a kind or form is called: a connector is a plug or a lead. */
    public Set<String> names(String kind) {
        return kinds.getOrDefault(kind, Set.of());
    }

    /** The sentences of a text in CommonMark. */
    public List<Sentence> sentences(String commonMark) {
        return Sentences.of(commonMark, this);
    }

    /** How numbers are written. */
    public NumberWords numbers() {
        return numbers;
    }

    /** How actions are said. */
    public Phrasing phrasing() {
        return phrasing;
    }

    /** How the trade jots actions down. */
    public TradeWords tradeWords() {
        return tradeWords;
    }

    /** How a text names steps by their numbers. */
    public NamedSteps namedSteps() {
        return namedSteps;
    }
}
