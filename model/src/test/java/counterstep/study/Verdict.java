package counterstep.study;

/**
 * Whether a fault can hurt.
 *
 * @param harm whether it can, and who can know
 * @param reason how it hurts; why not where it does not
 * @param orders in how many orders the work was done to find out; 0 where none was needed
 */
record Verdict(Harm harm, String reason, int orders) {
    /** How a fault can hurt. */
    enum Harm {
        /** Not at all. */
        NONE,
        /** By what the items, counts and facts of the document say. */
        FACTS,
        /** By what a person knows of the device; nothing in the document says it. */
        HAND
    }

    static Verdict harmless(String reason, int orders) {
        return new Verdict(Harm.NONE, reason, orders);
    }

    static Verdict hurts(String reason) {
        return new Verdict(Harm.FACTS, reason, 0);
    }

    static Verdict hurtsByHand(String reason) {
        return new Verdict(Harm.HAND, reason, 0);
    }
}
