/**
 * What the links allow: which step comes before which, and which order keeps them all. Items and
 * their state do not belong here; links may contain loops and everything must cope.
 */
package counterstep.links;
