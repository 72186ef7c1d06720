/**
 * The document, immutable: a procedure with its items, tools, steps, links and photos. Nothing here
 * computes a verdict, reads a file or draws; the types are the words of the trade that the rest
 * speaks in.
 */
package counterstep.model;
