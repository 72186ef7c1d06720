/**
 * The guide as it will print, beside the drawing. JavaFX lives here alone, and is loaded when the
 * preview is first seen; what the page says is made by the exporter.
 */
package counterstep.editor.preview;
