package counterstep.model;

/**
 * What is taken apart, in free words.
 *
 * @param maker who makes it
 * @param model which model
 * @param designation which variants, serial numbers, years
 */
public record Device(String maker, String model, String designation) {}
