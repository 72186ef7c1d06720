package counterstep.ledger;

/**
 * One condition on one action, or on how all ends.
 *
 * @param page place of the step in page order; the number of steps for the end
 * @param action place of the action in the step, from 0
 * @param demand the condition
 */
record Question(int page, int action, Demand demand) {}
