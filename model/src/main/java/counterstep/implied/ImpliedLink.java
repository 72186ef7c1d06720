package counterstep.implied;

import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;

/**
 * A link that must hold by the facts on items.
 *
 * @param ends the steps it joins
 * @param reason why, in one sentence: 'Back shell covers board screws.'
 */
public record ImpliedLink(LinkEnds ends, String reason) {
    /** The link that a document has once this one is accepted. */
    public Link accepted() {
        return new Link(ends.before(), ends.after(), LinkOrigin.IMPLIED, Extras.NONE);
    }
}
