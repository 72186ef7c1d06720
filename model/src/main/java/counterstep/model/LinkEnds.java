package counterstep.model;

/**
 * The two steps that a link joins: what a selection and a deletion name it by.
 *
 * @param before comes first
 * @param after comes later
 */
public record LinkEnds(StepId before, StepId after) {}
