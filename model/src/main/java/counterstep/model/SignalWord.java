package counterstep.model;

/**
 * The signal words in rising order of severity: NOTICE for damage to things, the others for injury
 * (ANSI Z535.4-2007, 4.14, second-hand).
 */
public enum SignalWord {
    /** A practice not related to injury: damage to property or data. */
    NOTICE,
    /** Could cause minor or moderate injury. */
    CAUTION,
    /** Could cause death or serious injury. */
    WARNING,
    /** Will cause death or serious injury. */
    DANGER
}
