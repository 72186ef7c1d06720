package counterstep.shorthand;

import counterstep.model.Action;
import counterstep.model.ActionDraft;
import counterstep.model.Attendance;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tool;
import counterstep.model.Torque;
import counterstep.model.Verb;
import counterstep.model.Wait;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** One entry, and the actions that it means in a document. */
final class EntryActions {
    private static final Set<Verb> READS =
            EnumSet.of(Verb.CHECK, Verb.NOTE, Verb.RESTORE, Verb.PROVE_DEAD, Verb.ALIGN);
    private static final Set<Verb> TIGHTENS =
            EnumSet.of(Verb.TIGHTEN, Verb.REINSTALL, Verb.FIT_NEW);

    private final Growing document;
    private final Vocabulary vocabulary;
    private final String said;
    private final Clause clause;
    private final ToolWords.Taken with;
    private final Attendance attendance;
    private final Entry entry;

    EntryActions(Growing document, String said) {
        this.document = document;
        this.said = said;
        vocabulary = document.vocabulary();
        with = document.tools().from(said);
        clause = Clause.of(with.words());
        Entry whole = EntryReader.read(vocabulary, clause.words());
        Optional<Attendance> attended = attendance(clause.words());
        boolean waits = attended.isPresent() && whole.sizes().seconds().isPresent();
        attendance = attended.filter(any -> waits).orElse(Attendance.UNATTENDED);
        entry = waits ? EntryReader.read(vocabulary, withoutLast(clause.words())) : whole;
    }

    private EntryActions(EntryActions other, Entry entry) {
        document = other.document;
        vocabulary = other.vocabulary;
        said = other.said;
        clause = other.clause;
        with = other.with;
        attendance = other.attendance;
        this.entry = entry;
    }

    private Optional<Attendance> attendance(String words) {
        String last = words.substring(words.lastIndexOf(' ') + 1).toLowerCase(Locale.ROOT);
        return vocabulary
                .tradeWords()
                .ofStep(last)
                .flatMap(word -> Sort.find(Attendance.values(), Attendance::word, word));
    }

    private static String withoutLast(String words) {
        return words.substring(0, words.lastIndexOf(' '));
    }

    /** The same entry; where it has no verb, with those that the one before it had. */
    EntryActions carrying(List<Verb> carried) {
        boolean bare = entry.acts() && entry.verbs().isEmpty();
        return bare ? new EntryActions(this, entry.withVerbs(carried)) : this;
    }

    boolean onFasteners() {
        return EntryReader.onFasteners(entry.verbs());
    }

    List<Verb> verbs() {
        return entry.verbs();
    }

    /** Whether it states sizes of fasteners. */
    boolean sized() {
        return entry.sizes().ofFasteners();
    }

    /** As typed. */
    String said() {
        return said;
    }

    Clause clause() {
        return clause;
    }

    /** What is done to what, without brackets, reading, remark and tool. */
    String words() {
        return clause.words();
    }

    /** The tool that has to be put on the list, or changed there. */
    Optional<Tool> newTool() {
        return with.tool().filter(tool -> !document.now().tools().contains(tool));
    }

    /** What it does; nothing where it is not understood. */
    List<Understood> actions() {
        if (!entry.acts()) {
            return List.of();
        }
        KnownItem known = new KnownItem(document.now(), vocabulary);
        Entry shorter = known.of(entry).isPresent() ? entry : known.nameFirst(entry);
        Entry read = known.of(shorter).isPresent() ? shorter : entry;
        Optional<Item> there = known.of(read).map(read.sizes()::addedTo);
        Verb first = read.verbs().get(0);
        if (there.isEmpty() && first.stateless()) {
            return List.of(understood(worded(first, read, Optional.empty()), Optional.empty()));
        }
        Optional<Item> item = there.or(() -> new NewItem(vocabulary, read).in(document.now()));
        return item.map(of -> on(of, read, there.isEmpty(), known)).orElse(List.of());
    }

    private Understood understood(Action action, Optional<Item> item) {
        return new Understood(action, item, false, List.of(), with.tool());
    }

    private List<Understood> on(Item plain, Entry read, boolean fresh, KnownItem known) {
        Optional<List<Verb>> series =
                vocabulary.tradeWords().series(read.before().toLowerCase(Locale.ROOT));
        List<Verb> verbs =
                series.map(all -> known.verbs(read, plain))
                        .orElseGet(() -> known.verb(read, plain).stream().toList());
        FactReader.Told told =
                FactReader.told(
                        renewed(plain, series.isPresent()), clause.facts(), document.named());
        List<Understood> done = new ArrayList<>();
        for (Verb verb : verbs) {
            boolean begins = done.isEmpty();
            done.add(
                    new Understood(
                            worded(verb, read, Optional.of(told.item())),
                            Optional.of(told.item()),
                            fresh && begins,
                            begins ? told.explained() : List.of(),
                            with.tool()));
        }
        return done;
    }

    /** A part that is replaced is one that this service renews. */
    private Item renewed(Item item, boolean replaced) {
        return replaced && item instanceof Part
                ? FactReader.told(item, "renewed", document.named()).item()
                : item;
    }

    private Action worded(Verb verb, Entry read, Optional<Item> item) {
        String name = item.isPresent() ? "" : read.name();
        String words = (name + " " + read.remark() + " " + clause.remark()).strip();
        boolean reads = READS.contains(verb);
        boolean looks = verb == Verb.CHECK && clause.reading().isEmpty();
        String reading = looks ? words : reads ? clause.reading() : "";
        String rest = looks ? "" : reads ? words : (words + " " + clause.reading()).strip();
        boolean seated = read.fingerTight() && (verb == Verb.REINSTALL || verb == Verb.FIT_NEW);
        return new ActionDraft(verb, item.map(Item::id), count(read, item))
                .fingerTight(seated)
                .torque(TIGHTENS.contains(verb) && !seated ? torque(read, item) : Optional.empty())
                .tool(with.tool().map(Tool::id))
                .reading(reading)
                .waiting(waiting(read))
                .remark(rest.replaceAll("\\s+", " "))
                .action();
    }

    private static Optional<Torque> torque(Entry read, Optional<Item> item) {
        Optional<FastenerSet> set =
                item.filter(FastenerSet.class::isInstance).map(FastenerSet.class::cast);
        return set.isEmpty()
                ? Optional.empty()
                : read.sizes().torque().or(() -> set.flatMap(FastenerSet::torque));
    }

    private static int count(Entry read, Optional<Item> item) {
        int size = item.map(Item::quantity).orElse(1);
        return item.filter(EntryActions::counts).isPresent()
                ? read.sizes().count().orElse(size)
                : size;
    }

    private static boolean counts(Item item) {
        return !(item instanceof Setting || item instanceof Joint || item instanceof EnergySource);
    }

    private Optional<Wait> waiting(Entry read) {
        return read.sizes().seconds().isPresent()
                ? Optional.of(new Wait(read.sizes().seconds().getAsInt(), attendance))
                : Optional.empty();
    }
}
