package counterstep.mirror;

/**
 * Where a step stands.
 *
 * @param column left or right
 * @param row from 0 at the top
 */
public record Cell(Column column, int row) {}
