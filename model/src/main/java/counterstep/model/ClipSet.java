package counterstep.model;

/**
 * Clips that open and close again.
 *
 * @param id its id
 * @param name what they are called
 * @param quantity how many
 * @param note free remark
 * @param extras unknown fields
 */
public record ClipSet(ItemId id, String name, int quantity, String note, Extras extras)
        implements Item {
    /** Refuses a quantity below 1. */
    public ClipSet {
        Require.atLeast(1, quantity, "a quantity");
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.clips(this);
    }
}
