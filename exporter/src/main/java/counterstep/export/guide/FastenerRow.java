package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import java.util.List;
import java.util.Optional;

/**
 * A fastener set in the table of fasteners. Texts are empty where nothing is stated.
 *
 * @param set the set itself
 * @param name what it is called
 * @param count how many
 * @param drive drive and size
 * @param size thread and length, 'M1.6 × 4'
 * @param head head, and form where it is no screw
 * @param into what it goes into
 * @param torque with its unit
 * @param order order of tightening, locking
 * @param use reuse, renew or captive
 * @param tray where it lies while out
 * @param off numbers of the steps that loosen or remove it
 * @param back numbers of the steps that put it back or tighten it
 */
public record FastenerRow(
        FastenerSet set,
        String name,
        int count,
        Optional<Drive> drive,
        String size,
        String head,
        String into,
        String torque,
        String order,
        String use,
        String tray,
        List<Integer> off,
        List<Integer> back) {
    /** Copies the lists. */
    public FastenerRow {
        off = List.copyOf(off);
        back = List.copyOf(back);
    }

    /** The sets that the steps of a print touch, in the order in which they come off. */
    public static List<FastenerRow> of(Print print) {
        return new FastenerTable(print).rows();
    }
}
