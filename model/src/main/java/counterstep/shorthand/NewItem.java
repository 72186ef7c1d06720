package counterstep.shorthand;

import counterstep.edit.FreshIds;
import counterstep.ledger.FittingVerbs;
import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.KindWord;
import counterstep.model.Latch;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Seat;
import counterstep.model.Setting;
import counterstep.model.SourceKind;
import counterstep.model.Tie;
import counterstep.model.TieKind;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** The item that an entry names and the document does not have yet, with what is stated of it. */
final class NewItem {
    private static final ItemId ANY = new ItemId("x");

    private final Vocabulary vocabulary;
    private final Entry entry;

    NewItem(Vocabulary vocabulary, Entry entry) {
        this.vocabulary = vocabulary;
        this.entry = entry;
    }

    /** The item, of a fresh id; empty where nothing names one. */
    Optional<Item> in(Procedure procedure) {
        return kind().filter(like -> !name(like).isBlank())
                .map(like -> made(like, FreshIds.item(procedure, like), unique(like, procedure)));
    }

    /** The item of a kind that is known. */
    Item of(String kind, Procedure procedure) {
        Item like = sample(kind).orElseThrow();
        return made(like, FreshIds.item(procedure, like), unique(like, procedure));
    }

    /** A sample of the kind that the entry speaks of: by its sizes, its last word, its verb. */
    Optional<Item> kind() {
        if (entry.sizes().ofFasteners()) {
            return sample("fastener set");
        }
        return kindOfName()
                .flatMap(this::sample)
                .filter(this::fits)
                .or(() -> samples().stream().filter(this::fitsFirst).findFirst());
    }

    /** The kind that the last word of the name says. */
    Optional<String> kindOfName() {
        String name = entry.name().toLowerCase(Locale.ROOT);
        String last = name.substring(name.lastIndexOf(' ') + 1);
        return vocabulary
                .tradeWords()
                .kind(last)
                .or(() -> vocabulary.tradeWords().kind(vocabulary.stem(last)));
    }

    private boolean fits(Item item) {
        return FittingVerbs.of(item).stream().anyMatch(entry.verbs()::contains);
    }

    private boolean fitsFirst(Item item) {
        return !entry.verbs().isEmpty() && FittingVerbs.of(item).contains(entry.verbs().get(0));
    }

    private Optional<Item> sample(String kind) {
        return samples().stream()
                .filter(item -> item.match(KindWord.INSTANCE).equals(kind))
                .findFirst();
    }

    /** One of each kind, called nothing. */
    List<Item> samples() {
        return List.of(
                part(ANY, ""),
                fasteners(ANY, ""),
                clips(ANY, ""),
                tie(ANY, ""),
                connector(ANY, ""),
                joint(ANY, ""),
                new Setting(ANY, "", "", "", "", List.of(), "", Extras.NONE),
                source(ANY, ""));
    }

    private String name(Item like) {
        if (!(like instanceof FastenerSet)) {
            return entry.name();
        }
        if (kindOfName().equals(Optional.of("fastener set"))) {
            boolean bare = !entry.name().contains(" ");
            return bare ? (entry.sizes().label() + " " + entry.name()).strip() : entry.name();
        }
        String called = entry.name().isEmpty() ? entry.sizes().label() : entry.name();
        return called.isEmpty() ? "" : vocabulary.tradeWords().fasteners(called, count());
    }

    /** Two things of one name cannot be told apart: the second gets its size added. */
    private String unique(Item like, Procedure procedure) {
        String name = name(like);
        boolean taken =
                procedure.items().stream().anyMatch(item -> item.name().equalsIgnoreCase(name));
        String size = fasteners(ANY, "").size();
        String told = String.join(" ", entry.sizes().label(), size).strip();
        return taken && !told.isEmpty() ? name + ", " + told : name;
    }

    private int count() {
        return entry.sizes().count().orElse(1);
    }

    private Item made(Item like, ItemId id, String name) {
        return like.match(
                new Item.Cases<>() {
                    @Override
                    public Item part(Part part) {
                        return NewItem.this.part(id, name);
                    }

                    @Override
                    public Item fasteners(FastenerSet set) {
                        return NewItem.this.fasteners(id, name);
                    }

                    @Override
                    public Item clips(ClipSet clips) {
                        return NewItem.this.clips(id, name);
                    }

                    @Override
                    public Item tie(Tie tie) {
                        return NewItem.this.tie(id, name);
                    }

                    @Override
                    public Item connector(Connector connector) {
                        return NewItem.this.connector(id, name);
                    }

                    @Override
                    public Item joint(Joint joint) {
                        return NewItem.this.joint(id, name);
                    }

                    @Override
                    public Item setting(Setting setting) {
                        return new Setting(id, name, "", "", "", List.of(), "", Extras.NONE);
                    }

                    @Override
                    public Item source(EnergySource source) {
                        return NewItem.this.source(id, name);
                    }
                });
    }

    private Part part(ItemId id, String name) {
        return new Part(
                id,
                name,
                "",
                count(),
                false,
                false,
                List.of(),
                List.of(),
                List.of(),
                "",
                Extras.NONE);
    }

    private FastenerSet fasteners(ItemId id, String name) {
        return new FastenerSet(
                id,
                name,
                count(),
                form(),
                entry.sizes().drive(),
                head(),
                entry.sizes().thread(),
                entry.sizes().length(),
                "",
                Seat.UNKNOWN,
                Optional.empty(),
                "",
                "",
                false,
                false,
                "",
                "",
                Extras.NONE);
    }

    private Head head() {
        boolean hexagon =
                entry.sizes().drive().map(Drive::kind).stream()
                        .anyMatch(DriveKind.EXTERNAL_HEXAGON::equals);
        return hexagon ? Head.HEXAGON : Head.PAN;
    }

    private FastenerForm form() {
        String name = entry.name().toLowerCase(Locale.ROOT);
        String last = vocabulary.stem(name.substring(name.lastIndexOf(' ') + 1));
        for (FastenerForm form : FastenerForm.values()) {
            boolean called = vocabulary.names(form.word()).contains(last);
            if (form != FastenerForm.SCREW && called && form.word().length() > 0) {
                return form;
            }
        }
        return FastenerForm.SCREW;
    }

    private ClipSet clips(ItemId id, String name) {
        return new ClipSet(id, name, count(), "", Extras.NONE);
    }

    private Tie tie(ItemId id, String name) {
        TieKind kind =
                sort(name, "tie")
                        .map(word -> Sort.value(TieKind.values(), TieKind::word, word))
                        .orElse(TieKind.CABLE_TIE);
        return new Tie(id, name, count(), kind, "", Extras.NONE);
    }

    private Optional<String> sort(String name, String ofWhat) {
        return Sort.in(name, ofWhat, vocabulary.tradeWords());
    }

    private Connector connector(ItemId id, String name) {
        ConnectorKind kind =
                sort(name, "connector")
                        .map(word -> Sort.value(ConnectorKind.values(), ConnectorKind::word, word))
                        .orElse(ConnectorKind.PLUG);
        return new Connector(
                id, name, count(), kind, Latch.NONE, OptionalInt.empty(), "", Extras.NONE);
    }

    private Joint joint(ItemId id, String name) {
        JointKind kind =
                sort(name, "joint")
                        .map(word -> Sort.value(JointKind.values(), JointKind::word, word))
                        .orElse(JointKind.ADHESIVE);
        return new Joint(id, name, kind, Optional.empty(), "", "", Extras.NONE);
    }

    private EnergySource source(ItemId id, String name) {
        SourceKind kind =
                sort(name, "source")
                        .map(word -> Sort.value(SourceKind.values(), SourceKind::word, word))
                        .orElse(SourceKind.CELL);
        return new EnergySource(
                id,
                name,
                kind,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                "",
                0,
                false,
                "",
                "",
                Extras.NONE);
    }
}
