package counterstep.export.guide;

/**
 * How long a phase takes.
 *
 * @param phase its name, or 'all'
 * @param steps how many
 * @param time minutes and seconds, waits included
 * @param waiting minutes and seconds of it that are waits
 * @param toolChanges how often a tool is picked up
 */
public record PhaseTime(String phase, int steps, String time, String waiting, int toolChanges) {}
