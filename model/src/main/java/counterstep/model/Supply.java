package counterstep.model;

/**
 * A thing used up by applying, laying or cleaning; it has no state.
 *
 * @param id its id
 * @param name what it is called
 * @param amount how much the whole work needs, '120 mm'; may be empty
 * @param note free remark
 * @param extras unknown fields
 */
public record Supply(SupplyId id, String name, String amount, String note, Extras extras) {}
