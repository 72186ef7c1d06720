/** Checks that everything ends as it began, or as the service says; sums, whatever the order. */
package counterstep.check.completeness;
