/**
 * Named changes of a document, each a pure function from procedure to procedure. The plain ones
 * live here; an edit that needs thought lives beside the thought.
 */
package counterstep.edit;
