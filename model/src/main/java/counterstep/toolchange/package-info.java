/**
 * Which tool each action needs, and how often the hand takes up another. Whether a tool fits is a
 * check's business.
 */
package counterstep.toolchange;
