package counterstep.export.tray;

import counterstep.export.guide.FastenerRow;
import java.util.List;

/**
 * The cell of one fastener set.
 *
 * @param letter by which the map names it: A to Z, then AA
 * @param row what the set is and which steps touch it
 * @param alike how to tell it from those that look alike
 */
record TrayCell(String letter, FastenerRow row, List<String> alike) {
    /** Copies the list. */
    TrayCell {
        alike = List.copyOf(alike);
    }
}
