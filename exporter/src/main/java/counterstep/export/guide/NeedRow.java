package counterstep.export.guide;

import java.util.List;

/**
 * A part to have ready, or something that is used up.
 *
 * @param name what it is called
 * @param usedUp a supply; else something new that is fitted
 * @param number the maker's part number; may be empty
 * @param amount '1, new', '120 mm'; may be empty
 * @param steps numbers of the steps that use it, rising
 */
public record NeedRow(
        String name, boolean usedUp, String number, String amount, List<Integer> steps) {
    /** Copies the list. */
    public NeedRow {
        steps = List.copyOf(steps);
    }
}
