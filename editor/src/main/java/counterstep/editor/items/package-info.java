/**
 * The Items panel: the register of what can be taken off, opened, loosened or noted, with the steps
 * that take each off and put it back. Editing an item is the Details panel's business.
 */
package counterstep.editor.items;
