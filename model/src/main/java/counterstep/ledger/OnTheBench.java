package counterstep.ledger;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.List;

/**
 * What lies about when a step is done.
 *
 * @param onMat taken out or away, and kept
 * @param looseOrOpen loose, open, cut, released
 * @param aside parts aside with their leads on
 * @param noted settings noted or disturbed, still to be restored
 */
public record OnTheBench(
        List<Lying> onMat, List<Lying> looseOrOpen, List<Lying> aside, List<Lying> noted) {
    /** Copies the lists. */
    public OnTheBench {
        onMat = List.copyOf(onMat);
        looseOrOpen = List.copyOf(looseOrOpen);
        aside = List.copyOf(aside);
        noted = List.copyOf(noted);
    }

    /**
     * One item of such a list.
     *
     * @param item which
     * @param count how many
     * @param since the step from which on some of it has been so without a break
     */
    public record Lying(ItemId item, int count, StepId since) {}
}
