package counterstep.mirror;

import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;

/**
 * Something that a step takes off, opens, loosens, notes or isolates and that nothing undoes.
 *
 * @param off the step
 * @param item of what
 * @param verb what is done in it; a putting back where it leaves fasteners finger-tight
 * @param count how many, 1 or more
 */
record Opened(StepId off, ItemId item, Verb verb, int count) {
    boolean is(ItemId other, Verb... verbs) {
        return item.equals(other) && List.of(verbs).contains(verb);
    }
}
