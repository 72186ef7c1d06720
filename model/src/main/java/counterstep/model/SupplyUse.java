package counterstep.model;

/**
 * How much of a supply an action uses up.
 *
 * @param supply which
 * @param amount in the writer's words, '120 mm'; may be empty
 * @param extras unknown fields
 */
public record SupplyUse(SupplyId supply, String amount, Extras extras) {}
