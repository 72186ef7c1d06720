/**
 * Part of a document, taken out and put into this or another: copied steps, and the blocks a writer
 * keeps. Pure; clipboard and disk are elsewhere.
 */
package counterstep.excerpt;
