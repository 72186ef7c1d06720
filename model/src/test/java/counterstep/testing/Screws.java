package counterstep.testing;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.ScrewThread;
import counterstep.model.Seat;
import counterstep.model.ThreadKind;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fastener sets that tests ask for. */
public final class Screws {
    private Screws() {}

    /** Screws that stay in their part. */
    public static FastenerSet captive(String id, int count) {
        return screws(id, count, Optional.empty(), true, false);
    }

    /** Screws that are thrown away and fitted new each time. */
    public static FastenerSet oneTime(String id, int count) {
        return screws(id, count, Optional.empty(), false, true);
    }

    /** Hexalobular screws of a size. */
    public static FastenerSet hexalobular(String id, int count, String size) {
        Drive drive = new Drive(DriveKind.HEXALOBULAR, size);
        return screws(id, count, Optional.of(drive), false, false);
    }

    /** Metric screws with a coarse pitch of a class, into a seat. */
    public static FastenerSet metric(
            String id, int count, double diameter, String propertyClass, Seat seat) {
        return thread(
                screws(id, count, Optional.empty(), false, false),
                diameter,
                OptionalDouble.empty(),
                propertyClass,
                seat);
    }

    /** Metric screws of a drive and length. */
    public static FastenerSet metric(
            String id, int count, Optional<Drive> drive, double diameter, OptionalDouble length) {
        FastenerSet plain = screws(id, count, drive, false, false);
        return thread(plain, diameter, length, "", Seat.UNKNOWN);
    }

    private static FastenerSet thread(
            FastenerSet set,
            double diameter,
            OptionalDouble length,
            String propertyClass,
            Seat seat) {
        return new FastenerSet(
                set.id(),
                set.name(),
                set.quantity(),
                set.form(),
                set.drive(),
                set.head(),
                Optional.of(new ScrewThread(ThreadKind.METRIC, diameter, OptionalDouble.empty())),
                length,
                propertyClass,
                seat,
                set.torque(),
                set.tightening(),
                set.locking(),
                set.captive(),
                set.renew(),
                set.tray(),
                set.note(),
                set.extras());
    }

    private static FastenerSet screws(
            String id, int count, Optional<Drive> drive, boolean captive, boolean renew) {
        return new FastenerSet(
                new ItemId(id),
                id + " screws",
                count,
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
                captive,
                renew,
                "",
                "",
                Extras.NONE);
    }
}
