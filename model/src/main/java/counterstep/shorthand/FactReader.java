package counterstep.shorthand;

import counterstep.model.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Reads what stands in brackets after a thing as facts of it: 'held by lid screws; static'. What is
 * no fact of such a thing becomes its note.
 */
final class FactReader {
    private static final Set<String> LISTS =
            Set.of("held by", "held loosely by", "tethered by", "covers", "feeds", "belongs to");

    private final FactsOf of;
    private final Named named;
    private final List<String> taken = new ArrayList<>();
    private final List<String> noted = new ArrayList<>();
    private String list = "";

    private FactReader(FactsOf of, Named named) {
        this.of = of;
        this.named = named;
    }

    /**
     * An item with its facts.
     *
     * @param item as told
     * @param taken the facts, as typed
     * @param noted what became its note
     */
    record Told(Item item, List<String> taken, List<String> noted) {
        /** All of it, for an explanation. */
        List<String> explained() {
            List<String> all = new ArrayList<>(taken);
            noted.forEach(words -> all.add("note '" + words + "'"));
            return all;
        }
    }

    static Told told(Item item, String facts, Named named) {
        FactReader reader = new FactReader(item.match(new FactsByKind(named)), named);
        Cut.atSemicolons(facts).forEach(reader::read);
        String news = String.join(", ", reader.noted);
        boolean both = !item.note().isEmpty() && !news.isEmpty();
        String note = item.note() + (both ? ", " : "") + news;
        return new Told(reader.of.item(note), reader.taken, reader.noted);
    }

    private void read(String piece) {
        if (take(piece)) {
            return;
        }
        for (String small : Cut.pieces(piece)) {
            if (!take(small) && (list.isEmpty() || !takeMore(small))) {
                noted.add(unquoted(small));
            }
        }
        list = "";
    }

    private static String unquoted(String words) {
        boolean quoted = words.length() > 1 && words.startsWith("\"") && words.endsWith("\"");
        return quoted ? words.substring(1, words.length() - 1) : words;
    }

    /** 'covers fan, lead': the lead goes on with the list. */
    private boolean takeMore(String small) {
        String name = small.startsWith("and ") ? small.substring("and ".length()) : small;
        return take(list + " " + name);
    }

    private boolean take(String piece) {
        FactWords said = FactWords.of(piece, named.vocabulary().tradeWords());
        boolean took = of.take(said);
        if (took) {
            taken.add(piece);
            list = LISTS.contains(said.fact()) ? said.phrase() : "";
        }
        return took;
    }
}
