package counterstep.export.spoken;

import java.util.List;
import java.util.OptionalInt;

/**
 * What is said at one step, or before the first.
 *
 * @param number the step's place in page order, from 1; 0 is the opening
 * @param title of the step
 * @param passages what is said, each notice a passage of its own that its signal word begins
 * @param source where what is no notice comes from, in words
 * @param words how many are said, notices among them
 * @param from how many words were said before
 * @param seconds how long the step takes, waits included; empty where no time is stated
 * @param shown its photos in words
 */
record Spoken(
        int number,
        String title,
        List<Passage> passages,
        String source,
        int words,
        int from,
        OptionalInt seconds,
        List<String> shown) {
    /** Copies the lists. */
    Spoken {
        passages = List.copyOf(passages);
        shown = List.copyOf(shown);
    }
}
