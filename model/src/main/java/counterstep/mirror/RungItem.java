package counterstep.mirror;

import counterstep.model.ItemId;

/**
 * What a rung names.
 *
 * @param item which item
 * @param count how many of it
 */
public record RungItem(ItemId item, int count) {}
