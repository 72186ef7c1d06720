package counterstep.edit;

import counterstep.model.Procedure;
import counterstep.model.TitleBlock;

/**
 * Sets title, device, summary, conditions and cautions.
 *
 * @param titleBlock as it shall be
 */
public record SetTitleBlock(TitleBlock titleBlock) implements Edit {
    @Override
    public String name() {
        return "Change title block";
    }

    @Override
    public Procedure apply(Procedure before) {
        return before.draft().titleBlock(titleBlock).procedure();
    }
}
