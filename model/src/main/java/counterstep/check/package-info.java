/**
 * The contract of a check: what it is told, what it says, and the rule that one fault gives one
 * finding. The checks themselves stand in the packages below.
 */
package counterstep.check;
