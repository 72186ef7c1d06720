/** Checks of the order of steps: each action finds its item, and what is around it, ready. */
package counterstep.check.sequence;
