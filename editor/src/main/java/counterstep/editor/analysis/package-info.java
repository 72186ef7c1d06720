/**
 * What is derived from the open document, off the event thread: findings, plan, layout. Nothing
 * here changes a document or knows a panel.
 */
package counterstep.editor.analysis;
