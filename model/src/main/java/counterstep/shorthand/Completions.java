package counterstep.shorthand;

import counterstep.ledger.FittingVerbs;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import counterstep.model.Verb;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the last entry of a line can go on: items already there, verbs, phases, drives in use. */
public final class Completions {
    private static final int MOST = 6;
    private static final int MOST_VERBS = 4;

    private final Procedure procedure;
    private final Vocabulary vocabulary;
    private final String start;
    private final String typed;
    private final Entry entry;

    private Completions(Procedure procedure, String line) {
        this.procedure = procedure;
        this.vocabulary = Vocabulary.orEnglish(procedure.titleBlock().language());
        this.start = line.substring(0, entryStart(line));
        this.typed = line.substring(start.length());
        this.entry = EntryReader.read(vocabulary, typed);
    }

    /** What the line can become, the likeliest first; nothing for a line without words. */
    public static List<Completion> of(Procedure procedure, String line) {
        Completions completions = new Completions(procedure, line);
        if (completions.typed.isBlank()) {
            return List.of();
        }
        return completions
                .all(line)
                .filter(one -> !one.line().strip().equalsIgnoreCase(line.strip()))
                .limit(MOST)
                .toList();
    }

    private Stream<Completion> all(String line) {
        if (line.stripLeading().startsWith(Shorthand.WARNS)) {
            return SignalCompletions.of(line).stream();
        }
        if (Clause.openBracket(typed) >= 0) {
            return new FactCompletions(procedure, vocabulary).of(start, typed).stream();
        }
        List<Completion> tools = ToolCompletions.of(procedure, start, typed);
        boolean ended = typed.indexOf('(') >= 0 || Clause.sign(typed) < typed.length();
        if (!tools.isEmpty() || ended || typed.indexOf('"') >= 0) {
            return tools.stream();
        }
        return Stream.of(verbs(), PhaseCompletions.of(start, typed), drives(), items())
                .flatMap(List::stream);
    }

    private static int entryStart(String line) {
        int start = Math.max(Cut.lastStart(line), TypedLine.bodyStart(line));
        int from = start;
        while (from < line.length() && line.charAt(from) == ' ') {
            from++;
        }
        return from;
    }

    private List<Completion> verbs() {
        String lower = typed.toLowerCase(Locale.ROOT);
        Set<String> offered = new LinkedHashSet<>();
        return vocabulary.tradeWords().phrases().stream()
                .filter(phrase -> phrase.startsWith(lower) && !phrase.equals(lower.strip()))
                .filter(phrase -> !meant(phrase).isEmpty())
                .filter(phrase -> offered.add(meant(phrase).get(0).word()))
                .limit(MOST_VERBS)
                .map(
                        phrase ->
                                new Completion(
                                        start + phrase + " ",
                                        phrase,
                                        explained(phrase, meant(phrase).get(0)),
                                        Optional.empty()))
                .toList();
    }

    private List<Verb> meant(String phrase) {
        return vocabulary.tradeWords().before(phrase).orElse(List.of());
    }

    private String explained(String phrase, Verb verb) {
        Optional<List<Verb>> series = vocabulary.tradeWords().series(phrase);
        if (series.isPresent()) {
            return "means "
                    + series.get().stream().map(Verb::word).collect(Collectors.joining(", "))
                    + ", as they fit";
        }
        String meaning = phrase.equals(verb.word()) ? "" : "means " + verb.word() + "; ";
        return meaning
                + verb.inverse()
                        .map(inverse -> "undone by " + inverse.word())
                        .orElse("needs nothing to undo it");
    }

    /** Drives that the document knows, for a word that begins like one. */
    private List<Completion> drives() {
        String last = typed.substring(typed.lastIndexOf(' ') + 1);
        boolean place = last.matches("[A-Za-z][A-Za-z0-9-]*") && typed.length() > last.length();
        boolean possible = entry.verbs().isEmpty() || EntryReader.onFasteners(entry.verbs());
        if (!place || !possible || entry.sizes().drive().isPresent()) {
            return List.of();
        }
        String before = typed.substring(0, typed.length() - last.length());
        return Stream.concat(
                        procedure.items().stream()
                                .filter(FastenerSet.class::isInstance)
                                .flatMap(item -> ((FastenerSet) item).drive().stream()),
                        procedure.tools().stream().map(Tool::drive).flatMap(Optional::stream))
                .distinct()
                .filter(drive -> begins(drive.label(), last))
                .sorted(Comparator.comparing(Drive::label))
                .map(
                        drive ->
                                new Completion(
                                        start + before + drive.label() + " ",
                                        drive.label(),
                                        drive.kind().word() + ", size " + drive.size(),
                                        Optional.empty()))
                .toList();
    }

    private static boolean begins(String word, String beginning) {
        return word.toLowerCase(Locale.ROOT).startsWith(beginning.toLowerCase(Locale.ROOT));
    }

    private record Match(Item item, int missing, boolean used) {}

    private List<Completion> items() {
        List<String> words = words(entry.name());
        boolean acts = entry.acts() && !entry.verbs().stream().allMatch(Verb::stateless);
        if (words.isEmpty() && !acts && !entry.sizes().ofFasteners()) {
            return List.of();
        }
        return procedure.items().stream()
                .filter(item -> entry.sizes().agreeWith(item))
                .filter(item -> !item.name().equalsIgnoreCase(entry.name()))
                .map(item -> new Match(item, missing(words, item), used(item)))
                .filter(match -> match.missing() == 0 || likely(match, words))
                .filter(match -> fits(match.item()))
                .sorted(Comparator.comparingInt(Match::missing).thenComparing(Match::used))
                .map(match -> completed(match.item()))
                .toList();
    }

    private boolean likely(Match match, List<String> words) {
        return entry.sizes().ofFasteners() && match.missing() < words.size();
    }

    private boolean fits(Item item) {
        return entry.verbs().isEmpty()
                || FittingVerbs.of(item).stream().anyMatch(entry.verbs()::contains);
    }

    /** How many of the words begin no word of the item's name. */
    private static int missing(List<String> words, Item item) {
        List<String> name = words(item.name());
        return (int)
                words.stream()
                        .filter(word -> name.stream().noneMatch(each -> each.startsWith(word)))
                        .count();
    }

    private static List<String> words(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Whether one of the verbs was already said of the item. */
    private boolean used(Item item) {
        return procedure.steps().stream()
                .flatMap(step -> step.actions().stream())
                .filter(action -> action.item().equals(Optional.of(item.id())))
                .anyMatch(action -> entry.verbs().contains(action.verb()));
    }

    private Completion completed(Item item) {
        List<String> parts = new ArrayList<>(List.of(entry.before()));
        entry.sizes().count().ifPresent(count -> parts.add(Integer.toString(count)));
        parts.add(item.name());
        parts.add(entry.remark());
        parts.add(entry.after());
        String line =
                parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
        return new Completion(start + line, item.name(), ItemWords.of(item), Optional.of(item));
    }
}
