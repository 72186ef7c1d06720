/**
 * How long the work takes and what decides it: durations, critical path, floats. Tools and hands
 * that are short belong elsewhere.
 */
package counterstep.plan;
