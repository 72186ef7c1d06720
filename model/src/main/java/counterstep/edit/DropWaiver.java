package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.Waiver;

/**
 * Takes back the acceptance of a finding.
 *
 * @param waiver as it stands in the document
 */
public record DropWaiver(Waiver waiver) implements Edit {
    @Override
    public String name() {
        return "Drop waiver";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft()
                .waivers(before.waivers().stream().filter(one -> !one.equals(waiver)).toList())
                .procedure();
    }
}
