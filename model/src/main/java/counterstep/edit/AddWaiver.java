package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Waiver;
import java.util.ArrayList;
import java.util.List;

/**
 * Accepts a finding.
 *
 * @param waiver of which finding, and why
 */
public record AddWaiver(Waiver waiver) implements Edit {
    @Override
    public String name() {
        return "Waive finding";
    }

    @Override
    public Procedure apply(Procedure before) {
        if (before.waivers().contains(waiver)) {
            return before;
        }
        List<Waiver> waivers = new ArrayList<>(before.waivers());
        waivers.add(waiver);
        return before.draft().waivers(waivers).procedure();
    }
}
