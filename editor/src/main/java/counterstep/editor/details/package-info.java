/**
 * The Details panel: a form for what is selected, be it a step, an item or a link, and for the
 * whole procedure when nothing is. Every field sends an edit; nothing is computed here.
 */
package counterstep.editor.details;
