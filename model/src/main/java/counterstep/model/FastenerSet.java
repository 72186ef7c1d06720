package counterstep.model;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Like fasteners in one place.
 *
 * @param id its id
 * @param name what it is called
 * @param quantity how many
 * @param form screw, nut, ring or standoff
 * @param drive drive and size; empty where none is known
 * @param head the head
 * @param thread the thread; empty where none is known
 * @param length in mm from under the head, overall when countersunk (ISO 225); empty = not stated
 * @param propertyClass ISO 898-1 or 3506-1, '8.8', 'A2-70'; may be empty
 * @param seat what it goes into
 * @param torque tightening torque; empty = not stated
 * @param tightening the order of tightening: 'crosswise'; may be empty
 * @param locking locking compound or patch; may be empty
 * @param captive stays in its part: only loosened and tightened
 * @param renew thrown away and fitted new each time
 * @param tray the named tray it is kept in while out; may be empty
 * @param note free remark
 * @param extras unknown fields
 */
public record FastenerSet(
        ItemId id,
        String name,
        int quantity,
        FastenerForm form,
        Optional<Drive> drive,
        Head head,
        Optional<ScrewThread> thread,
        OptionalDouble length,
        String propertyClass,
        Seat seat,
        Optional<Torque> torque,
        String tightening,
        String locking,
        boolean captive,
        boolean renew,
        String tray,
        String note,
        Extras extras)
        implements Item {
    /** Refuses a quantity below 1 and a length that is not above 0. */
    public FastenerSet {
        Require.atLeast(1, quantity, "a quantity");
        if (length.isPresent()) {
            Require.positive(length.getAsDouble(), "a length");
        }
    }

    /** Plain pan-head screws of a drive, all else not stated. */
    public static FastenerSet screws(ItemId id, String name, int quantity, Optional<Drive> drive) {
        return new FastenerSet(
                id,
                name,
                quantity,
                FastenerForm.SCREW,
                drive,
                Head.PAN,
                Optional.empty(),
                OptionalDouble.empty(),
                "",
                Seat.UNKNOWN,
                Optional.empty(),
                "",
                "",
                false,
                false,
                "",
                "",
                Extras.NONE);
    }

    /** The same set under another id, for another document. */
    public FastenerSet withId(ItemId newId) {
        return with(newId, torque, tray);
    }

    /** The same set with another torque, or none. */
    public FastenerSet withTorque(Optional<Torque> newTorque) {
        return with(id, newTorque, tray);
    }

    /** The same set, kept in another tray while it is out. */
    public FastenerSet withTray(String newTray) {
        return with(id, torque, newTray);
    }

    private FastenerSet with(ItemId newId, Optional<Torque> newTorque, String newTray) {
        return new FastenerSet(
                newId,
                name,
                quantity,
                form,
                drive,
                head,
                thread,
                length,
                propertyClass,
                seat,
                newTorque,
                tightening,
                locking,
                captive,
                renew,
                newTray,
                note,
                extras);
    }

    /** Thread and length as on a drawing, 'M1.6 × 4'; empty where neither is stated. */
    public String size() {
        String start = thread.map(ScrewThread::label).orElse("");
        if (length.isEmpty()) {
            return start;
        }
        String end = Numbers.plain(length.getAsDouble());
        return start.isEmpty() ? end + " mm" : start + " × " + end;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.fasteners(this);
    }
}
