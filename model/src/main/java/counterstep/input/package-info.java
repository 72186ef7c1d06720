/**
 * What may come in from outside, and how a refusal reads. Reading itself is the business of the
 * packages that know a format.
 */
package counterstep.input;
