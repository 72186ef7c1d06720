package counterstep.words;

import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** How the trade jots things down: '4 x T5 out', 'unplug cell lead', 'lid off'. */
public final class TradeWords {
    private final Map<String, List<Verb>> before;
    private final Map<String, List<Verb>> after;
    private final Map<String, String> kinds = new LinkedHashMap<>();
    private final Map<String, Integer> seconds = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Map<String, List<Verb>> series;
    private final Map<String, String> facts;
    private final Map<String, String> ofSteps;
    private final Map<String, Map<String, String>> factsOf = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> sorts = new LinkedHashMap<>();

    TradeWords(LanguageFile file) {
        before = verbs(file, "typed before");
        after = verbs(file, "typed after");
        series = verbs(file, "typed series");
        facts = meanings(file, "typed facts");
        ofSteps = meanings(file, "typed of a step");
        for (List<String> row : file.rows("typed facts")) {
            for (String kind : listed(row.get(2))) {
                factsOf.computeIfAbsent(kind, any -> new LinkedHashMap<>())
                        .put(listed(row.get(1)).get(0), row.get(3));
            }
        }
        for (List<String> row : file.rows("typed sorts")) {
            Map<String, String> words =
                    sorts.computeIfAbsent(row.get(0), any -> new LinkedHashMap<>());
            listed(row.get(2)).forEach(phrase -> words.put(phrase, row.get(1)));
        }
        for (List<String> row : file.rows("typed kinds")) {
            words(row.get(1)).forEach(word -> kinds.put(word, row.get(0)));
        }
        for (List<String> row : file.rows("time units")) {
            words(row.get(1)).forEach(word -> seconds.put(word, Integer.valueOf(row.get(0))));
        }
        file.rows("typed names").forEach(row -> names.put(row.get(0), row.get(1)));
    }

    private static Map<String, List<Verb>> verbs(LanguageFile file, String section) {
        Map<String, List<Verb>> verbs = new LinkedHashMap<>();
        for (List<String> row : file.rows(section)) {
            List<Verb> meant =
                    listed(row.get(1)).stream().map(word -> Verb.of(word).orElseThrow()).toList();
            listed(row.get(0)).forEach(phrase -> verbs.put(phrase, meant));
        }
        return verbs;
    }

    private static Map<String, String> meanings(LanguageFile file, String section) {
        Map<String, String> meanings = new LinkedHashMap<>();
        for (List<String> row : file.rows(section)) {
            listed(row.get(1)).forEach(phrase -> meanings.put(phrase, row.get(0)));
        }
        return meanings;
    }

    private static List<String> listed(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(",\\s*"));
    }

    private static List<String> words(String cell) {
        return Arrays.asList(cell.split("\\s+"));
    }

    /** The phrases that stand before their thing. */
    public List<String> phrases() {
        List<String> phrases = new ArrayList<>(before.keySet());
        phrases.addAll(series.keySet());
        return phrases;
    }

    /**
     * The verbs that a phrase before its thing can mean, the likeliest first: an empty list where
     * it is no action on an item, nothing where it is no such phrase.
     */
    public Optional<List<Verb>> before(String phrase) {
        return Optional.ofNullable(before.get(phrase)).or(() -> series(phrase));
    }

    /** The verbs that a phrase after its thing can mean. */
    public Optional<List<Verb>> after(String phrase) {
        return Optional.ofNullable(after.get(phrase));
    }

    /** The verbs, in a row, that a phrase before its thing says: 'replace'. */
    public Optional<List<Verb>> series(String phrase) {
        return Optional.ofNullable(series.get(phrase));
    }

    /** What begins a fact, and which fact that is. */
    public Map<String, String> facts() {
        return Collections.unmodifiableMap(facts);
    }

    /** The facts that a kind of item has, each with what it says. */
    public Map<String, String> factsOf(String kind) {
        return Collections.unmodifiableMap(factsOf.getOrDefault(kind, Map.of()));
    }

    /** What a word says of a whole step: 'measured', 'safe to pause'. */
    public Optional<String> ofStep(String phrase) {
        return Optional.ofNullable(ofSteps.get(phrase));
    }

    /** The phrases that say which sort of connector, latch, tie, tool ... it is, and that sort. */
    public Map<String, String> sorts(String ofWhat) {
        return Collections.unmodifiableMap(sorts.getOrDefault(ofWhat, Map.of()));
    }

    /** The kind of a new item by the last word of its name, without the ending of the many. */
    public Optional<String> kind(String stem) {
        return Optional.ofNullable(kinds.get(stem));
    }

    /** Seconds of a unit of time. */
    public OptionalInt seconds(String unit) {
        Integer found = seconds.get(unit);
        return found == null ? OptionalInt.empty() : OptionalInt.of(found);
    }

    /** The name of a new set of so many fasteners that is called after its place or drive. */
    public String fasteners(String name, int count) {
        return names.get(count == 1 ? "one" : "several").replace("{name}", name);
    }
}
