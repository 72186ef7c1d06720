package counterstep.ledger;

/**
 * One counter in a sum.
 *
 * @param counter which
 * @param factor how it counts, 1 or -1
 */
record Term(Counter counter, int factor) {
    static Term plus(Counter counter) {
        return new Term(counter, 1);
    }

    static Term minus(Counter counter) {
        return new Term(counter, -1);
    }
}
