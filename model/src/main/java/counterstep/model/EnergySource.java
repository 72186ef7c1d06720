package counterstep.model;

import java.util.List;
import java.util.Optional;

/**
 * A cell, the mains, a charged capacitor, a spring, pressure or heat.
 *
 * @param id its id
 * @param name what it is called
 * @param kind where the energy waits
 * @param feeds items that must not be touched while it is live
 * @param isolatedBy the connector whose opening isolates it; its closing restores power
 * @param dependsOn the source it hangs on, whose isolation is its own too
 * @param isolation how it is isolated, in words; may be empty
 * @param waitSeconds how long to wait after isolating before it can be proved dead, 0 or more
 * @param mustProveDead whether it asks to be proved dead
 * @param limit to what it is proved dead, 'below 5 V'; may be empty
 * @param note free remark
 * @param extras unknown fields
 */
public record EnergySource(
        ItemId id,
        String name,
        SourceKind kind,
        List<ItemId> feeds,
        Optional<ItemId> isolatedBy,
        Optional<ItemId> dependsOn,
        String isolation,
        int waitSeconds,
        boolean mustProveDead,
        String limit,
        String note,
        Extras extras)
        implements Item {
    /** Refuses a negative wait; copies the list. */
    public EnergySource {
        Require.atLeast(0, waitSeconds, "a wait");
        feeds = List.copyOf(feeds);
    }

    @Override
    public int quantity() {
        return 1;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.source(this);
    }
}
