package counterstep.shorthand;

import counterstep.ledger.FittingVerbs;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Procedure;
import counterstep.model.Verb;
import counterstep.words.Vocabulary;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The item of the document that an entry means, and the verb that it means for it. */
final class KnownItem {
    private final Procedure procedure;
    private final Vocabulary vocabulary;

    KnownItem(Procedure procedure, Vocabulary vocabulary) {
        this.procedure = procedure;
        this.vocabulary = vocabulary;
    }

    /** The item of just that name; else the only one of its kind whose name has all the words. */
    Optional<Item> of(Entry entry) {
        Set<String> typed = stems(entry.name());
        List<Item> possible =
                procedure.items().stream()
                        .filter(item -> entry.sizes().agreeWith(item))
                        .filter(item -> stems(item.name()).containsAll(typed))
                        .filter(item -> verb(entry, item).isPresent())
                        .toList();
        Optional<Item> named =
                possible.stream()
                        .filter(item -> !typed.isEmpty() && stems(item.name()).equals(typed))
                        .findFirst();
        return named.or(() -> onlyOfItsKind(entry, typed, possible));
    }

    private Optional<Item> onlyOfItsKind(Entry entry, Set<String> typed, List<Item> possible) {
        Optional<String> kind =
                new NewItem(vocabulary, entry).kind().map(like -> like.match(KindWord.INSTANCE));
        List<Item> like =
                possible.stream()
                        .filter(item -> kind.equals(Optional.of(item.match(KindWord.INSTANCE))))
                        .filter(item -> entry.sizes().count().orElse(1) <= item.quantity())
                        .filter(item -> !typed.isEmpty() || onlySizes(entry))
                        .toList();
        return only(like).or(() -> only(bySameCore(like, typed)));
    }

    /** The entry with all but the name of an item as a remark: 'plate screws half a turn'. */
    Entry nameFirst(Entry entry) {
        String name = entry.name();
        for (int end = name.lastIndexOf(' '); end > 0; end = name.lastIndexOf(' ', end - 1)) {
            Set<String> typed = stems(name.substring(0, end));
            boolean known =
                    procedure.items().stream().anyMatch(item -> stems(item.name()).equals(typed));
            if (known) {
                return entry.withNameOf(end);
            }
        }
        return entry;
    }

    private static boolean onlySizes(Entry entry) {
        return entry.name().isEmpty() && entry.sizes().ofFasteners();
    }

    /** 'lower frame' is the lower frame screws rather than the lower frame corner screws. */
    private List<Item> bySameCore(List<Item> items, Set<String> typed) {
        return items.stream()
                .filter(item -> core(item, stems(item.name())).equals(core(item, typed)))
                .toList();
    }

    private Set<String> core(Item item, Set<String> stems) {
        Set<String> core = new HashSet<>(stems);
        if (item instanceof FastenerSet set) {
            core.removeAll(vocabulary.names(set.form().word()));
        }
        return core;
    }

    private static Optional<Item> only(List<Item> items) {
        return items.size() == 1 ? Optional.of(items.get(0)) : Optional.empty();
    }

    private Set<String> stems(String name) {
        return Named.stems(name, vocabulary);
    }

    /** The verb that undoes what was done to the item, else the likeliest that fits it. */
    Optional<Verb> verb(Entry entry, Item item) {
        Set<Verb> fitting = Set.copyOf(FittingVerbs.of(item));
        List<Verb> verbs = entry.verbs().stream().filter(fitting::contains).toList();
        return verbs.stream()
                .filter(verb -> verb.inverse().filter(inverse -> done(inverse, item)).isPresent())
                .filter(verb -> !done(verb, item))
                .findFirst()
                .or(() -> verbs.stream().findFirst());
    }

    /** All its verbs that fit the item, as said. */
    List<Verb> verbs(Entry entry, Item item) {
        List<Verb> fitting = FittingVerbs.of(item);
        return entry.verbs().stream().filter(fitting::contains).toList();
    }

    private boolean done(Verb verb, Item item) {
        return procedure.steps().stream()
                .flatMap(step -> step.actions().stream())
                .anyMatch(
                        action ->
                                action.verb() == verb
                                        && action.item().equals(Optional.of(item.id())));
    }
}
