/**
 * Two orders of the same steps side by side, to be judged before one is taken. Finding an order
 * does not belong here.
 */
package counterstep.editor.order;
