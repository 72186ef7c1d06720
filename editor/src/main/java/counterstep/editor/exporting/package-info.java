/**
 * The dialog that asks what leaves the program, and shows it beforehand. It writes nothing; what an
 * export looks like is decided by the exporters.
 */
package counterstep.editor.exporting;
