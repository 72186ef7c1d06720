/** Checks that nothing is touched under power. */
package counterstep.check.safety;
