package counterstep.plan;

/**
 * When a step may run if the whole is to take no longer than the critical path: whole seconds from
 * the start of the work.
 *
 * @param earliestStart when all that comes before it can be done
 * @param earliestFinish that and its duration
 * @param latestStart that of its latest finish less its duration
 * @param latestFinish when it must be done so that nothing ends late
 * @param totalFloat by how much it may start late without lengthening the whole
 * @param freeFloat by how much it may finish late without delaying any other step's earliest start
 */
public record StepTimes(
        int earliestStart,
        int earliestFinish,
        int latestStart,
        int latestFinish,
        int totalFloat,
        int freeFloat) {
    /** Whether any delay of it delays the whole. */
    public boolean critical() {
        return totalFloat == 0;
    }
}
