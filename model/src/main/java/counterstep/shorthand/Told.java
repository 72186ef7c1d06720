package counterstep.shorthand;

import counterstep.edit.AddItem;
import counterstep.edit.ChangeItem;
import counterstep.edit.Edit;
import counterstep.model.Action;
import counterstep.model.ActionDraft;
import counterstep.model.Attendance;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import counterstep.model.Verb;
import counterstep.model.Wait;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The entries of a line, one after the other, each in the document that the ones before leave. */
final class Told {
    /** A comma between figures is a decimal one. */
    static final Pattern SEPARATOR = Pattern.compile("\\s*(?:;|,(?![0-9])|(?<![0-9]),)\\s*");

    private final Vocabulary vocabulary;
    private final List<Edit> edits = new ArrayList<>();
    private final List<Understood> actions = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private final List<String> unread = new ArrayList<>();
    private final List<String> explained = new ArrayList<>();
    private Procedure after;

    Told(Procedure before, Optional<Phase> phase, String line) {
        vocabulary = Vocabulary.orEnglish(before.titleBlock().language());
        after = before;
        boolean closing = phase.filter(now -> now.compareTo(Phase.REASSEMBLY) >= 0).isPresent();
        List<Verb> carried = List.of(closing ? Verb.REINSTALL : Verb.REMOVE);
        for (String said : SEPARATOR.split(line)) {
            if (!said.isBlank()) {
                Entry entry = EntryReader.read(vocabulary, said);
                carried = EntryReader.onFasteners(entry.verbs()) ? entry.verbs() : carried;
                add(entry.acts() && entry.verbs().isEmpty() ? entry.withVerbs(carried) : entry);
            }
        }
        if (titles.isEmpty()) {
            plain(line.strip());
        }
    }

    private void add(Entry entry) {
        Optional<Understood> understood = entry.acts() ? understood(entry) : Optional.empty();
        if (understood.isEmpty()) {
            plain(entry.said());
            return;
        }
        Understood one = understood.get();
        one.item()
                .filter(item -> one.newItem() || !item.equals(after.item(item.id())))
                .map(item -> one.newItem() ? new AddItem(item) : new ChangeItem(item))
                .ifPresent(this::apply);
        actions.add(one);
        titles.add(title(entry, one));
        explained.add(Explanation.of(one));
    }

    private void apply(Edit edit) {
        edits.add(edit);
        after = edit.apply(after);
    }

    private void plain(String said) {
        String tidy = said.replaceAll("\\s+", " ");
        titles.add(tidy);
        unread.add(tidy);
        explained.add("'" + tidy + "'");
    }

    private Optional<Understood> understood(Entry whole) {
        KnownItem known = new KnownItem(after, vocabulary);
        Entry entry = known.of(whole).isPresent() ? whole : known.nameFirst(whole);
        Optional<Item> there = known.of(entry).map(entry.sizes()::addedTo);
        Verb first = entry.verbs().get(0);
        if (there.isEmpty() && first.stateless()) {
            return Optional.of(
                    new Understood(
                            worded(first, entry, Optional.empty()), Optional.empty(), false));
        }
        Optional<Item> item = there.or(() -> new NewItem(vocabulary, entry).in(after));
        return item.flatMap(
                of ->
                        known.verb(entry, of)
                                .map(verb -> worded(verb, entry, item))
                                .map(action -> new Understood(action, item, there.isEmpty())));
    }

    private static Action worded(Verb verb, Entry entry, Optional<Item> item) {
        String name = item.isPresent() ? "" : entry.name();
        String words = (name + " " + entry.remark()).strip();
        boolean looks = verb == Verb.CHECK;
        return new ActionDraft(verb, item.map(Item::id), count(entry, item))
                .fingerTight(
                        entry.fingerTight() && (verb == Verb.REINSTALL || verb == Verb.FIT_NEW))
                .reading(looks ? words : "")
                .waiting(waiting(entry))
                .remark(looks ? "" : words)
                .action();
    }

    private static int count(Entry entry, Optional<Item> item) {
        int size = item.map(Item::quantity).orElse(1);
        return item.filter(Told::counts).isPresent() ? entry.sizes().count().orElse(size) : size;
    }

    private static boolean counts(Item item) {
        return !(item instanceof Setting || item instanceof Joint || item instanceof EnergySource);
    }

    private static Optional<Wait> waiting(Entry entry) {
        return entry.sizes().seconds().isPresent()
                ? Optional.of(new Wait(entry.sizes().seconds().getAsInt(), Attendance.UNATTENDED))
                : Optional.empty();
    }

    /** Sizes are told by the item; any other entry is its own title. */
    private String title(Entry entry, Understood one) {
        Optional<Item> set = one.item().filter(FastenerSet.class::isInstance);
        return entry.sizes().ofFasteners() && set.isPresent()
                ? vocabulary.phrasing().title(one.action(), one.item())
                : entry.said().replaceAll("\\s+", " ");
    }

    List<Understood> actions() {
        return actions;
    }

    /** What enters the new items, and what is newly known of the others. */
    List<Edit> edits() {
        return edits;
    }

    /** The document after these edits. */
    Procedure after() {
        return after;
    }

    String title() {
        List<String> parts = new ArrayList<>();
        for (String title : titles) {
            parts.add(parts.isEmpty() ? capital(title) : small(title));
        }
        return String.join(", ", parts);
    }

    /** The words that no action carries, as a sentence; may be empty. */
    String unread() {
        String words = String.join(", ", unread);
        boolean ends = words.isEmpty() || ".!?".indexOf(words.charAt(words.length() - 1)) >= 0;
        return capital(words) + (ends ? "" : ".");
    }

    String explanation() {
        return explained.stream().collect(Collectors.joining("; "));
    }

    private static String capital(String words) {
        int first = words.isEmpty() ? 0 : Character.charCount(words.codePointAt(0));
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }

    /** In the middle of a title; a label such as T5 or J4 stays as it is. */
    private static String small(String words) {
        boolean label =
                words.length() < 2
                        || !Character.isUpperCase(words.charAt(0))
                        || !Character.isLowerCase(words.charAt(1));
        return label ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
