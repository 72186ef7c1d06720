/**
 * Steps on the system's clipboard, between windows as a document of their own and for other
 * programs as text; and photos that come in by paste or drop.
 */
package counterstep.editor.clipboard;
