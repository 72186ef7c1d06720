package counterstep.model;

/**
 * One-way ties: cut once, always discarded, fitted new.
 *
 * @param id its id
 * @param name what they are called
 * @param quantity how many
 * @param kind cable tie, tape, rivet
 * @param note free remark
 * @param extras unknown fields
 */
public record Tie(ItemId id, String name, int quantity, TieKind kind, String note, Extras extras)
        implements Item {
    /** Refuses a quantity below 1. */
    public Tie {
        Require.atLeast(1, quantity, "a quantity");
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.tie(this);
    }
}
