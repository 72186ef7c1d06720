package counterstep.shorthand;

import counterstep.edit.AddItem;
import counterstep.model.KindWord;
import counterstep.model.Procedure;
import counterstep.words.Vocabulary;

/** Enters a thing of which nothing but the name is known. */
public final class ItemOfName {
    private static final String MOSTLY = "part";

    private ItemOfName() {}

    /** One item of that name: its kind is what the last word says, a part where it says nothing. */
    public static AddItem add(Procedure procedure, String name) {
        Vocabulary vocabulary = Vocabulary.orEnglish(procedure.titleBlock().language());
        NewItem maker = new NewItem(vocabulary, Entry.thing(name.strip()));
        String kind =
                maker.kindOfName()
                        .filter(
                                said ->
                                        maker.samples().stream()
                                                .map(like -> like.match(KindWord.INSTANCE))
                                                .anyMatch(said::equals))
                        .orElse(MOSTLY);
        return new AddItem(maker.of(kind, procedure));
    }
}
