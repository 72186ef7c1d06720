/**
 * The steps that reach some parts and put all back, taken out of a procedure that may do more.
 * Steps that a writer picks by hand are {@code excerpt}.
 */
package counterstep.reach;
