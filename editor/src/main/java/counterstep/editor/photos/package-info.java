/**
 * The panel of photos: those of the selected step, their callouts and words, and the steps that are
 * still to be photographed.
 */
package counterstep.editor.photos;
