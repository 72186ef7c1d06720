package counterstep.model;

/**
 * Who works on one device.
 *
 * @param technicians how many work at once, 1 or more
 * @param secondHolds whether a second person may hold or lift where a step says so
 */
public record Crew(int technicians, boolean secondHolds) {
    /** One technician alone. */
    public static final Crew ONE = new Crew(1, false);

    /** Refuses a crew of nobody. */
    public Crew {
        Require.atLeast(1, technicians, "a crew");
    }
}
