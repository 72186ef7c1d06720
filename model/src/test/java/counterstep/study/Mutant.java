package counterstep.study;

import counterstep.model.Procedure;

/**
 * A complete procedure with one fault.
 *
 * @param what the fault in a few words, with the step's id
 * @param procedure the document with the fault in it
 */
record Mutant(String what, Procedure procedure) {}
