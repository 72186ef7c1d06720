package counterstep.testing;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerForm;
import counterstep.model.FastenerSet;
import counterstep.model.Head;
import counterstep.model.ItemId;
import counterstep.model.Seat;
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
