package counterstep.ledger;

/**
 * How many of a fastener set are where. Tight, loose and missing add up to the size of the set;
 * after a failure a number may be negative.
 *
 * @param tight in their holes and tight
 * @param loose in their holes, finger-tight or loosened
 * @param missing holes that are empty
 * @param onMat taken out and kept
 */
public record FastenerState(int tight, int loose, int missing, int onMat) implements ItemState {
    @Override
    public boolean finished() {
        return loose <= 0 && missing <= 0 && onMat <= 0;
    }
}
