/**
 * The guide as one HTML file that holds everything in itself and prints well. What the guide says
 * is decided in the guide package; here it is only set.
 */
package counterstep.export.html;
