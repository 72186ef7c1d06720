package counterstep.model;

import java.util.List;

/**
 * A part, or several like ones.
 *
 * @param id its id
 * @param name what it is called
 * @param number the maker's part number; may be empty
 * @param quantity how many like ones
 * @param renewed this service exchanges it: it must be discarded and fitted new
 * @param staticSensitive a board or other part that static can damage
 * @param heldBy what holds it: released before it leaves its place, put back only while it is on
 * @param tetheredBy connectors and leads: open before it goes away, may stay closed while aside
 * @param covers items that can be reached only while this part is aside or away
 * @param note free remark
 * @param extras unknown fields
 */
public record Part(
        ItemId id,
        String name,
        String number,
        int quantity,
        boolean renewed,
        boolean staticSensitive,
        List<Hold> heldBy,
        List<ItemId> tetheredBy,
        List<ItemId> covers,
        String note,
        Extras extras)
        implements Item {
    /** Refuses a quantity below 1; copies the lists. */
    public Part {
        Require.atLeast(1, quantity, "a quantity");
        heldBy = List.copyOf(heldBy);
        tetheredBy = List.copyOf(tetheredBy);
        covers = List.copyOf(covers);
    }

    /** A single part that nothing holds, tethers or hides. */
    public static Part named(ItemId id, String name) {
        return new Part(
                id, name, "", 1, false, false, List.of(), List.of(), List.of(), "", Extras.NONE);
    }

    /** The same part with other facts on what holds, tethers and is covered by it. */
    public Part withFacts(List<Hold> holds, List<ItemId> tethers, List<ItemId> covered) {
        return new Part(
                id,
                name,
                number,
                quantity,
                renewed,
                staticSensitive,
                holds,
                tethers,
                covered,
                note,
                extras);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.part(this);
    }
}
