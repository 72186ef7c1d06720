/**
 * The step graph: draws the open procedure as two columns with rungs, and turns what the mouse and
 * the keys do there into edits. Cells are a picture of the document and hold nothing but ids.
 */
package counterstep.editor.canvas;
