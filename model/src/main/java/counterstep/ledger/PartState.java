package counterstep.ledger;

/**
 * How many like parts are where. On, aside and away add up to the quantity; after a failure a
 * number may be negative.
 *
 * @param on on their place
 * @param aside beside their place, leads on
 * @param away missing from the device
 * @param onMat taken away and kept
 */
public record PartState(int on, int aside, int away, int onMat) implements ItemState {
    @Override
    public boolean finished() {
        return aside <= 0 && away <= 0 && onMat <= 0;
    }
}
