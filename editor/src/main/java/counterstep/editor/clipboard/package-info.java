/**
 * Steps on the system's clipboard, between windows as a document of their own and for other
 * programs as text.
 */
package counterstep.editor.clipboard;
