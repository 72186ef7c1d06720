package counterstep.shorthand;

import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Numbers;
import counterstep.model.ScrewThread;
import counterstep.model.Torque;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The figures of one entry: '4 x T5 3.5', 'M1.6 x 4', '5 min'.
 *
 * @param count how many
 * @param drive drive and size
 * @param thread the thread
 * @param length in mm
 * @param seconds how long to wait
 * @param torque how tight
 */
record Sizes(
        OptionalInt count,
        Optional<Drive> drive,
        Optional<ScrewThread> thread,
        OptionalDouble length,
        OptionalInt seconds,
        Optional<Torque> torque) {
    /** No figures. */
    static final Sizes NONE =
            new Sizes(
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    Optional.empty());

    /** Whether anything is stated that only fasteners have. */
    boolean ofFasteners() {
        return drive.isPresent() || thread.isPresent() || length.isPresent();
    }

    /** Whether an item may be the one that is meant: nothing that is stated of it differs. */
    boolean agreeWith(Item item) {
        if (!ofFasteners()) {
            return true;
        }
        return item instanceof FastenerSet set
                && (drive.isEmpty() || set.drive().isEmpty() || drive.equals(set.drive()))
                && (thread.isEmpty() || set.thread().isEmpty() || sameThread(set))
                && (length.isEmpty() || set.length().isEmpty() || length.equals(set.length()));
    }

    private boolean sameThread(FastenerSet set) {
        return thread.map(ScrewThread::kind).equals(set.thread().map(ScrewThread::kind))
                && thread.map(ScrewThread::diameter).equals(set.thread().map(ScrewThread::diameter))
                && (pitch(thread).isEmpty()
                        || pitch(set.thread()).isEmpty()
                        || pitch(thread).equals(pitch(set.thread())));
    }

    private static OptionalDouble pitch(Optional<ScrewThread> thread) {
        return thread.isPresent() ? thread.get().pitch() : OptionalDouble.empty();
    }

    /** An item that agrees, with the sizes that were not stated of it before. */
    Item addedTo(Item item) {
        boolean none = !ofFasteners() && torque.isEmpty();
        if (none || !(item instanceof FastenerSet set)) {
            return item;
        }
        return new FastenerSet(
                set.id(),
                set.name(),
                set.quantity(),
                set.form(),
                set.drive().or(() -> drive),
                set.head(),
                pitch(set.thread()).isPresent() ? set.thread() : thread.or(set::thread),
                set.length().isPresent() ? set.length() : length,
                set.propertyClass(),
                set.seat(),
                set.torque().or(() -> torque),
                set.tightening(),
                set.locking(),
                set.captive(),
                set.renew(),
                set.tray(),
                set.note(),
                set.extras());
    }

    /** What a set is called where no other word is typed: 'T5', 'M1.6 × 4'. */
    String label() {
        return drive.map(Drive::label)
                .or(() -> thread.map(ScrewThread::label))
                .orElseGet(
                        () ->
                                length.isPresent()
                                        ? Numbers.plain(length.getAsDouble()) + " mm"
                                        : "");
    }
}
