/**
 * The document as JSON text, read with the place of every fault and written so that a diff reads
 * well; the only room that knows the JSON library. No disk access here.
 */
package counterstep.json;
