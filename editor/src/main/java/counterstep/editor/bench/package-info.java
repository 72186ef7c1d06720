/**
 * What is still in place, open or loose, and on the mat after a step. The states come from the
 * ledger, doubts from the checks; here they become rows.
 */
package counterstep.editor.bench;
