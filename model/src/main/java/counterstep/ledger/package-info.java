/**
 * The state of every item after each action, by the table of verbs and the conditions on them. It
 * says what is and what fails, not how bad that is: checks do.
 */
package counterstep.ledger;
