/**
 * What lies open in a window: the document, what is selected, its history. It knows no panel and
 * computes nothing; panels are told, and hand in edits.
 */
package counterstep.editor.desk;
