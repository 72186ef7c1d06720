package counterstep.shorthand;

import counterstep.model.Verb;
import counterstep.words.TradeWords;
import counterstep.words.Vocabulary;
import counterstep.words.WordClass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads one entry: the verb before or after its thing, figures, the name, how and where. */
final class EntryReader {
    private static final Set<Verb> ON_FASTENERS =
            EnumSet.of(
                    Verb.LOOSEN,
                    Verb.TIGHTEN,
                    Verb.REMOVE,
                    Verb.REINSTALL,
                    Verb.DISCARD,
                    Verb.FIT_NEW);
    private static final Pattern TIMES = Pattern.compile("(?<=[0-9])[x×](?=[0-9]|\\s|$)|×");
    private static final Pattern UNIT = Pattern.compile("(?<=[0-9])(mm|min|s|c?N·?m)(?=\\s|$)");
    private static final Optional<String> FASTENERS = Optional.of("fastener set");
    private static final int LONGEST_NAME = 5;
    private static final int LONGEST_PHRASE = 3;

    private final Vocabulary vocabulary;
    private final String said;
    private final Phrase phrase;
    private final List<String> how;

    private EntryReader(Vocabulary vocabulary, String said) {
        this.vocabulary = vocabulary;
        this.said = said;
        List<String> words = words(said);
        Phrase whole = Phrase.find(vocabulary.tradeWords(), words);
        Phrase found = whole.verbs().isPresent() ? whole : beforeSizes();
        int how = found.verbs().isPresent() ? words.size() : beforeHow(words);
        boolean cut = how < words.size();
        this.phrase = cut ? Phrase.find(vocabulary.tradeWords(), words.subList(0, how)) : found;
        this.how = cut ? words.subList(how, words.size()) : List.of();
    }

    /** Where it says how or where, behind the verb: 'lid off by its rim', 'screws in crosswise'. */
    private int beforeHow(List<String> words) {
        TradeWords trade = vocabulary.tradeWords();
        for (int at = 2; at < words.size(); at++) {
            boolean after = trade.after(words.get(at - 1).toLowerCase(Locale.ROOT)).isPresent();
            boolean says =
                    is(words.get(at), WordClass.PREPOSITION)
                            || is(words.get(at), WordClass.PARTICLE);
            if (after && says && !words.get(at).equalsIgnoreCase(vocabulary.partOf())) {
                return at;
            }
        }
        return words.size();
    }

    /** 'lid screws in M2 x 6': the verb stands before the sizes at the end. */
    private Phrase beforeSizes() {
        List<String> words = words(said);
        List<String> left = new SizeReader(vocabulary, words, true).left();
        Phrase found = Phrase.find(vocabulary.tradeWords(), left);
        int at = found.after().isEmpty() ? -1 : words.lastIndexOf(found.after().get(0));
        if (at < 0 || !found.before().isEmpty()) {
            return new Phrase(Optional.empty(), List.of(), List.of(), words);
        }
        List<String> rest = new ArrayList<>(words);
        rest.subList(at, at + found.after().size()).clear();
        return new Phrase(found.verbs(), List.of(), found.after(), rest);
    }

    /** What a phrase of verbs says, and the words that it leaves. */
    private record Phrase(
            Optional<List<Verb>> verbs,
            List<String> before,
            List<String> after,
            List<String> rest) {
        String said() {
            return lower(Stream.concat(before.stream(), after.stream()).toList());
        }

        static Phrase find(TradeWords trade, List<String> words) {
            Optional<Phrase> before = before(trade, words);
            Optional<Phrase> after = after(trade, words);
            boolean bare = before.isPresent() && before.get().bare(trade);
            return before.filter(found -> !bare || after.isEmpty() || verbless(found))
                    .or(() -> after)
                    .orElseGet(() -> new Phrase(Optional.empty(), List.of(), List.of(), words));
        }

        /** One word alone, or with nothing but a particle: 'clip off' is a clip. */
        private boolean bare(TradeWords trade) {
            boolean alone = rest.isEmpty() || trade.after(lower(rest)).isPresent();
            return alone && before.size() == 1 && after.isEmpty();
        }

        private static boolean verbless(Phrase phrase) {
            return phrase.verbs().orElseThrow().isEmpty();
        }

        private static Optional<Phrase> before(TradeWords trade, List<String> words) {
            for (int size = Math.min(LONGEST_PHRASE, words.size()); size > 0; size--) {
                List<String> said = words.subList(0, size);
                List<String> rest = words.subList(size, words.size());
                Optional<List<Verb>> verbs = trade.before(lower(said));
                if (verbs.isEmpty() && size == 1) {
                    return around(trade, words);
                }
                Optional<Phrase> around = size == 1 ? around(trade, words) : Optional.empty();
                if (verbs.isPresent()) {
                    return around.or(() -> Optional.of(new Phrase(verbs, said, List.of(), rest)));
                }
            }
            return Optional.empty();
        }

        /** 'take the lid off'. */
        private static Optional<Phrase> around(TradeWords trade, List<String> words) {
            if (words.size() < 2) {
                return Optional.empty();
            }
            int last = words.size() - 1;
            List<String> first = words.subList(0, 1);
            List<String> then = words.subList(last, words.size());
            List<String> rest = words.subList(1, last);
            return trade.before(lower(List.of(words.get(0), words.get(last))))
                    .map(verbs -> new Phrase(Optional.of(verbs), first, then, rest));
        }

        private static Optional<Phrase> after(TradeWords trade, List<String> words) {
            for (int size = Math.min(2, words.size() - 1); size > 0; size--) {
                int end = words.size() - size;
                List<String> said = words.subList(end, words.size());
                Optional<List<Verb>> verbs = trade.after(lower(said));
                if (verbs.isPresent()) {
                    return Optional.of(new Phrase(verbs, List.of(), said, words.subList(0, end)));
                }
            }
            return Optional.empty();
        }

        private static String lower(List<String> words) {
            return String.join(" ", words).toLowerCase(Locale.ROOT);
        }
    }

    /** Whether one of the verbs is done to fasteners. */
    static boolean onFasteners(List<Verb> verbs) {
        return verbs.stream().anyMatch(ON_FASTENERS::contains);
    }

    static Entry read(Vocabulary vocabulary, String said) {
        return new EntryReader(vocabulary, said.strip()).entry();
    }

    /** Figures parted from 'x' and from their unit. */
    static String apart(String said) {
        return UNIT.matcher(TIMES.matcher(said).replaceAll(" x ")).replaceAll(" $1 ").strip();
    }

    private static List<String> words(String said) {
        return Arrays.stream(apart(said).split("\\s+")).filter(word -> !word.isEmpty()).toList();
    }

    private Entry entry() {
        List<Verb> verbs = phrase.verbs().orElse(List.of());
        boolean none = phrase.verbs().isPresent() && verbs.isEmpty();
        if (none || statement()) {
            return plain();
        }
        boolean fasteners = verbs.isEmpty() || onFasteners(verbs);
        List<String> rest = new ArrayList<>(phrase.rest());
        boolean seated = rest.removeIf(word -> word.equalsIgnoreCase("finger-tight"));
        SizeReader figures = new SizeReader(vocabulary, rest, fasteners);
        List<String> left = new ArrayList<>(figures.left());
        dropArticles(left);
        if (!left.isEmpty()
                && left.get(0).equalsIgnoreCase("new")
                && verbs.contains(Verb.FIT_NEW)) {
            verbs = List.of(Verb.FIT_NEW);
            left.remove(0);
        }
        int end = nameEnd(left, phrase.said().isEmpty());
        List<String> name = whole(left.subList(0, end));
        if (name.size() > LONGEST_NAME || !name.isEmpty() && is(name.get(0), WordClass.PRONOUN)) {
            return plain();
        }
        return new Entry(
                said,
                verbs,
                figures.sizes(),
                String.join(" ", name),
                (String.join(" ", left.subList(end, left.size())) + " " + String.join(" ", how))
                        .strip(),
                seated || phrase.said().equals("finger-tight"),
                String.join(" ", phrase.before()),
                String.join(" ", phrase.after()));
    }

    private Entry plain() {
        return Entry.thing(said);
    }

    /** 'Lid is off', 'do not pull': no entry of what is done; 'wait until it is dark' is one. */
    private boolean statement() {
        List<String> words = words(said);
        return !words.isEmpty() && is(words.get(0), WordClass.NEGATION)
                || words.stream()
                        .takeWhile(word -> !is(word, WordClass.SUBORDINATOR))
                        .anyMatch(word -> is(word, WordClass.FINITE));
    }

    private boolean is(String word, WordClass kind) {
        return vocabulary.is(word.toLowerCase(Locale.ROOT), kind);
    }

    private void dropArticles(List<String> words) {
        while (words.size() > 1 && is(words.get(0), WordClass.ARTICLE)) {
            words.remove(0);
        }
    }

    /** A name ends before the word that says how, where or until when. */
    private int nameEnd(List<String> words, boolean verbless) {
        for (int at = 1; at < words.size() && !verbless; at++) {
            String word = words.get(at);
            boolean part = word.equalsIgnoreCase(vocabulary.partOf());
            if (!part && (is(word, WordClass.SUBORDINATOR) || is(word, WordClass.PREPOSITION))) {
                return at;
            }
        }
        int end = fastenersEnd(words);
        while (end > 1 && is(words.get(end - 1), WordClass.PARTICLE)) {
            end--;
        }
        return end;
    }

    /** What follows 'screws' says how: 'two lid screws half a turn'. */
    private int fastenersEnd(List<String> words) {
        for (int at = 0; at < words.size() - 1; at++) {
            String stem = vocabulary.stem(words.get(at));
            boolean fasteners = vocabulary.tradeWords().kind(stem).equals(FASTENERS);
            if (fasteners && !words.get(at + 1).equalsIgnoreCase(vocabulary.partOf())) {
                return at + 1;
            }
        }
        return words.size();
    }

    /** 'screws of the left grip' are the left grip screws. */
    private List<String> whole(List<String> name) {
        int of =
                name.stream()
                        .map(word -> word.toLowerCase(Locale.ROOT))
                        .toList()
                        .indexOf(vocabulary.partOf());
        if (of < 1 || of == name.size() - 1) {
            return name;
        }
        List<String> whole = new ArrayList<>(name.subList(of + 1, name.size()));
        dropArticles(whole);
        whole.addAll(name.subList(0, of));
        return whole;
    }
}
