package counterstep.model;

/**
 * The two steps that a link joins: what a selection and a deletion name it by.
 *
 * @param before comes first
 * @param after comes later
 */
public record LinkEnds(StepId before, StepId after) {
    private static final int SPREAD = 0x9E3779B1; // the golden ratio, as usual for hashes

    /** Spread wider than records do: ids that differ by a figure would often meet. */
    @Override
    public int hashCode() {
        return before.hashCode() * SPREAD + after.hashCode();
    }
}
