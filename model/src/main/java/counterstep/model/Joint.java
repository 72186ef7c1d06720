package counterstep.model;

import java.util.Optional;

/**
 * An adhesive, seal, solder or paste joint.
 *
 * @param id its id
 * @param name what it is called
 * @param kind what it is made of
 * @param release how it is released; empty = not stated
 * @param made how it is made again, 'new strip, press 30 s'; may be empty
 * @param note free remark
 * @param extras unknown fields
 */
public record Joint(
        ItemId id,
        String name,
        JointKind kind,
        Optional<Release> release,
        String made,
        String note,
        Extras extras)
        implements Item {
    @Override
    public int quantity() {
        return 1;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.joint(this);
    }
}
