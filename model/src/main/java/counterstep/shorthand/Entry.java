package counterstep.shorthand;

import counterstep.model.Verb;
import java.util.List;

/**
 * One entry of a line, read without regard to the document.
 *
 * @param said as typed, outer blanks dropped
 * @param verbs what it can mean, the likeliest first; empty where it names no verb
 * @param sizes its figures
 * @param name the words that name a thing; may be empty
 * @param remark the words that say how or where; may be empty
 * @param fingerTight seated only
 * @param before the words of the verb that stand before the thing, as typed; may be empty
 * @param after those that stand after it
 */
record Entry(
        String said,
        List<Verb> verbs,
        Sizes sizes,
        String name,
        String remark,
        boolean fingerTight,
        String before,
        String after) {
    /** Copies the list. */
    Entry {
        verbs = List.copyOf(verbs);
    }

    /** A name alone. */
    static Entry thing(String name) {
        return new Entry(name, List.of(), Sizes.NONE, name, "", false, "", "");
    }

    /** The same entry with the verbs that the one before it had. */
    Entry withVerbs(List<Verb> carried) {
        return new Entry(said, carried, sizes, name, remark, fingerTight, before, after);
    }

    /** The same entry, its name only so long, the rest of it a remark. */
    Entry withNameOf(int end) {
        String rest = (name.substring(end) + " " + remark).strip();
        return new Entry(
                said, verbs, sizes, name.substring(0, end), rest, fingerTight, before, after);
    }

    /** Whether it can be an action: it has a verb, or sizes that only fasteners have. */
    boolean acts() {
        return !verbs.isEmpty() || sizes.ofFasteners();
    }
}
