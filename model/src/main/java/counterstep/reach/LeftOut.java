package counterstep.reach;

import counterstep.model.StepId;

/**
 * A step that reaching some items can do without.
 *
 * @param step which
 * @param reason why, in one clause: 'cross brace stays as it is'
 */
public record LeftOut(StepId step, String reason) {}
