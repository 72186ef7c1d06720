package counterstep.model;

/**
 * One entry of the revision list.
 *
 * @param number as the writer counts
 * @param date ISO 8601
 * @param author who
 * @param changed what changed
 * @param extras unknown fields
 */
public record Revision(String number, String date, String author, String changed, Extras extras) {}
