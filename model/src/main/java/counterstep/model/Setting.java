package counterstep.model;

import java.util.List;

/**
 * A value noted before removal and restored after: a gap, a height, a shim, a cable route.
 *
 * @param id its id
 * @param name what it is called
 * @param unit of the value, 'mm'; may be empty
 * @param tolerance how near it must come back, '± 0.1 mm'; may be empty
 * @param measuredFrom from where it is measured; may be empty
 * @param belongsTo items whose loosening, removal or moving aside disturbs it
 * @param note free remark
 * @param extras unknown fields
 */
public record Setting(
        ItemId id,
        String name,
        String unit,
        String tolerance,
        String measuredFrom,
        List<ItemId> belongsTo,
        String note,
        Extras extras)
        implements Item {
    /** Copies the list. */
    public Setting {
        belongsTo = List.copyOf(belongsTo);
    }

    @Override
    public int quantity() {
        return 1;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.setting(this);
    }
}
