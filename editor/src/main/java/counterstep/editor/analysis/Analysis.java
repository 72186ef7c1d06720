package counterstep.editor.analysis;

import counterstep.model.Index;
import counterstep.model.Procedure;

/**
 * What is derived from one state of the document.
 *
 * @param generation of the state it was derived from
 * @param renewing whether the document has changed since and a newer analysis is on its way
 * @param index the document it was derived from, and look-ups in it
 */
public record Analysis(long generation, boolean renewing, Index index) {
    static Analysis of(Procedure procedure, long generation) {
        return new Analysis(generation, false, Index.of(procedure));
    }

    /** The document it was derived from; steps of it may be gone meanwhile. */
    public Procedure procedure() {
        return index.procedure();
    }

    /** This analysis while a newer one is on its way. */
    public Analysis beingRenewed() {
        return new Analysis(generation, true, index);
    }
}
