/**
 * The shorthand of the trade, as typed into the quick line: read as the edit that it asks for, and
 * completed. What is not understood becomes words of a title, so nothing is refused. Notes of more
 * than one line, and how an action is said in full, do not belong here.
 */
package counterstep.shorthand;
