/**
 * Edits that mend the order of a document: links drawn, steps moved, the drawing kept as light as
 * it was. What has to be mended is not known here.
 */
package counterstep.mending;
