package counterstep.check;

import counterstep.edit.Edit;

/**
 * A change that mends a finding; offered only after it was tried and nothing else got worse.
 *
 * @param name what the button says, in the imperative: 'Set to 5'
 * @param edit the change, one undo
 */
public record Fix(String name, Edit edit) {}
