package counterstep.find;

import java.util.List;

/**
 * A name of the document, and where the texts use it.
 *
 * @param name as its item or tool has it
 * @param uses in page order
 */
public record Term(String name, List<TextPlace> uses) {
    /** Copies the list. */
    public Term {
        uses = List.copyOf(uses);
    }
}
