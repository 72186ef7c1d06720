/**
 * What a guide says, as a tree without format: every word and number that is printed, in order.
 * Markup, files and layout do not belong here.
 */
package counterstep.export.guide;
