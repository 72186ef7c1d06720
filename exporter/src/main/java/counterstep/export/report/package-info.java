/**
 * The review report: what was checked, found, accepted and said of a procedure, for a reviewer to
 * sign. What is wrong is decided by the checks; here it is only told and set.
 */
package counterstep.export.report;
