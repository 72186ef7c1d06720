/**
 * The frame around the panels: menu and keys, bar, status line, dialogs, files on a worker. The
 * list of panels stands here; nobody imports this package but the entry of the jar.
 */
package counterstep.editor.window;
