/**
 * Which steps some words lead to. What is wrong with a step, and how it is shown, do not belong
 * here.
 */
package counterstep.find;
