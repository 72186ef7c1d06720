package counterstep.shorthand;

import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Procedure;
import counterstep.words.TradeWords;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** How an open bracket can go on: facts of the thing before it, and the items that these name. */
final class FactCompletions {
    private static final Pattern LAST = Pattern.compile("(?:^|[;,])\\s*([^;,]*)$");
    private static final Map<String, List<String>> SORTS =
            Map.of(
                    "connector", List.of("connector", "latch"),
                    "tie", List.of("tie"),
                    "joint", List.of("joint"),
                    "energy source", List.of("source"),
                    "fastener set", List.of("head"));
    private static final Set<String> NAMES =
            Set.of(
                    "held by",
                    "held loosely by",
                    "tethered by",
                    "covers",
                    "feeds",
                    "belongs to",
                    "isolated by",
                    "depends on");

    private final Procedure procedure;
    private final Vocabulary vocabulary;
    private final TradeWords trade;

    FactCompletions(Procedure procedure, Vocabulary vocabulary) {
        this.procedure = procedure;
        this.vocabulary = vocabulary;
        this.trade = vocabulary.tradeWords();
    }

    /**
     * Ways to go on.
     *
     * @param start what stands before the entry
     * @param typed the entry, its bracket open
     */
    List<Completion> of(String start, String typed) {
        int open = Clause.openBracket(typed);
        String facts = typed.substring(open);
        String thing = typed.substring(0, open - 1).strip();
        String piece = facts.substring(facts.lastIndexOf(';') + 1).stripLeading();
        FactWords said = FactWords.of(piece, trade);
        Matcher last = LAST.matcher(facts);
        String begun = last.find() ? last.group(1) : "";
        String before = start + typed.substring(0, typed.length() - begun.length());
        boolean listed = NAMES.contains(said.fact());
        List<Completion> names = listed ? items(start + typed, said) : List.of();
        boolean another = !listed || said.rest().contains(",") && !begun.isEmpty();
        List<Completion> others =
                another ? facts(before, begun.toLowerCase(Locale.ROOT), kind(thing)) : List.of();
        return Stream.concat(names.stream(), others.stream()).toList();
    }

    /** The kind of the thing that the bracket follows. */
    private String kind(String thing) {
        Entry entry = EntryReader.read(vocabulary, thing);
        return new KnownItem(procedure, vocabulary)
                .of(entry)
                .or(() -> new Named(procedure, vocabulary).item(thing, any -> true))
                .or(() -> new NewItem(vocabulary, entry).kind())
                .map(item -> item.match(KindWord.INSTANCE))
                .orElse("part");
    }

    private List<Completion> facts(String before, String begun, String kind) {
        Stream<Completion> facts =
                trade.factsOf(kind).entrySet().stream()
                        .map(fact -> completion(before, fact.getKey(), fact.getValue()));
        Stream<Completion> sorts =
                SORTS.getOrDefault(kind, List.of()).stream()
                        .flatMap(of -> trade.sorts(of).entrySet().stream())
                        .map(sort -> completion(before, sort.getKey(), sort.getValue()));
        return Stream.concat(facts, sorts).filter(one -> one.offered().startsWith(begun)).toList();
    }

    private static Completion completion(String before, String words, String explanation) {
        return new Completion(before + words, words, explanation, Optional.empty());
    }

    private List<Completion> items(String line, FactWords said) {
        String[] names = said.rest().split(",|(?<=\\s)and(?=\\s|$)", -1);
        String begun = names[names.length - 1].strip();
        boolean apart = line.endsWith(" ") || !begun.isEmpty();
        String before = line.substring(0, line.stripTrailing().length() - begun.length());
        String gap = apart && before.endsWith(" ") ? "" : " ";
        return procedure.items().stream()
                .filter(item -> suits(said.fact(), item))
                .filter(
                        item ->
                                item.name()
                                        .toLowerCase(Locale.ROOT)
                                        .startsWith(begun.toLowerCase(Locale.ROOT)))
                .map(
                        item ->
                                new Completion(
                                        before + gap + item.name(),
                                        item.name(),
                                        ItemWords.of(item),
                                        Optional.of(item)))
                .toList();
    }

    private static boolean suits(String fact, Item item) {
        return switch (fact) {
            case "held by", "held loosely by" -> PartFacts.canHold(item);
            case "tethered by", "isolated by" -> item instanceof Connector;
            case "depends on" -> item instanceof EnergySource;
            default -> true;
        };
    }
}
