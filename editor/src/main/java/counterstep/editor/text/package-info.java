/**
 * The procedure as prose to be edited, in page order. How a text is changed, searched and counted
 * is told by the model; here it is shown.
 */
package counterstep.editor.text;
