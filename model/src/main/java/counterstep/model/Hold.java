package counterstep.model;

/**
 * One thing that holds a part in its place.
 *
 * @param holder fastener set, clip set, tie or joint
 * @param looseIsEnough a keyhole or slotted hole: the part comes free when the fasteners are loose
 * @param extras unknown fields
 */
public record Hold(ItemId holder, boolean looseIsEnough, Extras extras) {
    /** A plain hold, to be released wholly. */
    public static Hold by(ItemId holder) {
        return new Hold(holder, false, Extras.NONE);
    }
}
