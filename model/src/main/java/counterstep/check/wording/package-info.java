/** Checks of what the writer says of a step, apart from what it does to items. */
package counterstep.check.wording;
