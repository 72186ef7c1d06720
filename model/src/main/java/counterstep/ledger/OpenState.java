package counterstep.ledger;

/**
 * How many clips, connectors or ties are closed and open; of ties, holding and cut.
 *
 * @param closed mated, clipped, holding
 * @param open open or cut; after a failure a number may be negative
 */
public record OpenState(int closed, int open) implements ItemState {
    @Override
    public boolean finished() {
        return open <= 0;
    }
}
