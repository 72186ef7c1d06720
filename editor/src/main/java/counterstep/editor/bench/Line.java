package counterstep.editor.bench;

import counterstep.model.Item;

/**
 * A row about one item.
 *
 * @param item which
 * @param count how many, '4'; may be empty
 * @param state what is the case with it, 'since step 3'
 */
record Line(Item item, String count, String state) {}
