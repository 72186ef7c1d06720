package counterstep.edit;

import counterstep.model.Procedure;

/** One change that a person would call one; undone as one. */
public interface Edit {
    /** What the menu says after Undo and Redo: 'Rename step'. */
    String name();

    /**
     * The changed document; equal to the given one where nothing changes.
     *
     * @throws IllegalArgumentException if the change has no meaning in this document
     */
    Procedure apply(Procedure before);
}
