package counterstep.model;

import java.util.OptionalInt;

/**
 * Connectors of one kind that are opened and closed together. They never hold a part in its place,
 * they tether it.
 *
 * @param id its id
 * @param name what it is called
 * @param quantity how many
 * @param kind how it joins
 * @param latch what keeps it closed
 * @param ratedMatings matings the maker allows, 1 or more; empty = not stated
 * @param note free remark
 * @param extras unknown fields
 */
public record Connector(
        ItemId id,
        String name,
        int quantity,
        ConnectorKind kind,
        Latch latch,
        OptionalInt ratedMatings,
        String note,
        Extras extras)
        implements Item {
    /** Refuses a quantity or rated matings below 1. */
    public Connector {
        Require.atLeast(1, quantity, "a quantity");
        if (ratedMatings.isPresent()) {
            Require.atLeast(1, ratedMatings.getAsInt(), "rated matings");
        }
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.connector(this);
    }
}
