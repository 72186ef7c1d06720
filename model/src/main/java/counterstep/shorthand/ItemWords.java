package counterstep.shorthand;

import counterstep.model.Connector;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.Item;
import counterstep.model.KindWord;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What an item is, in a few words: '2 × T5, M1.6 × 4 pan head'. */
final class ItemWords {
    private ItemWords() {}

    static String of(Item item) {
        if (item instanceof FastenerSet set) {
            return fasteners(set);
        }
        String kind =
                item instanceof Connector connector
                        ? connector.kind().word()
                        : item.match(KindWord.INSTANCE);
        return item.quantity() == 1 ? kind : item.quantity() + " × " + kind;
    }

    private static String fasteners(FastenerSet set) {
        String head = set.head() == Head.NONE ? "" : set.head().word() + " head";
        String size = (set.size() + " " + head).strip();
        String drive = set.drive().map(Drive::label).orElse("");
        List<String> words = Stream.of(drive, size).filter(word -> !word.isEmpty()).toList();
        return set.quantity() + " × " + words.stream().collect(Collectors.joining(", "));
    }
}
