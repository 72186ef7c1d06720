package counterstep.shorthand;

import counterstep.edit.AddItem;
import counterstep.edit.ChangeItem;
import counterstep.edit.Edit;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.words.WordClass;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Facts that are told of an item without doing anything to it. An item that is not there yet is
 * made, of the kind that has such facts.
 *
 * @param edit what enters or changes it
 * @param explanation what that is, in words
 */
record Registered(Edit edit, String explanation) {
    private static final int LONGEST_NAME = 5;

    static Optional<Registered> of(Growing document, Clause clause) {
        if (clause.facts().isEmpty() || clause.words().isEmpty()) {
            return Optional.empty();
        }
        Named named = document.named();
        String name = clause.words();
        Optional<Item> there = named.item(name, item -> true);
        boolean same = there.filter(item -> named.same(item, name)).isPresent();
        return there.map(item -> FactReader.told(item, clause.facts(), named))
                .filter(told -> same ? !told.taken().isEmpty() : told.noted().isEmpty())
                .map(told -> new Registered(new ChangeItem(told.item()), explained(told, false)))
                .or(() -> fresh(document, clause, named));
    }

    private static Optional<Registered> fresh(Growing document, Clause clause, Named named) {
        String[] words = clause.words().split("\\s+");
        boolean says =
                List.of(words).stream()
                        .map(word -> word.toLowerCase(Locale.ROOT))
                        .anyMatch(word -> document.vocabulary().is(word, WordClass.FINITE));
        boolean there =
                named.item(clause.words(), item -> named.same(item, clause.words())).isPresent();
        if (says || there || words.length > LONGEST_NAME) {
            return Optional.empty();
        }
        NewItem maker = new NewItem(document.vocabulary(), Entry.thing(clause.words()));
        FactReader.Told best = null;
        for (Item like : inOrder(maker)) {
            Item made = maker.of(like.match(KindWord.INSTANCE), document.now());
            FactReader.Told told = FactReader.told(made, clause.facts(), named);
            boolean better = best == null || told.taken().size() > best.taken().size();
            best = better ? told : best;
        }
        return Optional.ofNullable(best)
                .filter(told -> !told.taken().isEmpty())
                .map(told -> new Registered(new AddItem(told.item()), explained(told, true)));
    }

    /** The kind that the name says comes first. */
    private static List<Item> inOrder(NewItem maker) {
        List<Item> samples = new ArrayList<>(maker.samples());
        Optional<String> named = maker.kindOfName();
        samples.stream()
                .filter(like -> named.equals(Optional.of(like.match(KindWord.INSTANCE))))
                .findFirst()
                .ifPresent(like -> Collections.swap(samples, 0, samples.indexOf(like)));
        return samples;
    }

    private static String explained(FactReader.Told told, boolean fresh) {
        return Explanation.registered(told.item(), fresh, told.explained());
    }
}
